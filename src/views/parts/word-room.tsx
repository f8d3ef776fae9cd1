import './word-room.css';

/** Room for a sentence that is still being worked out, so that what stands below it need not move. */
export const WordRoom = ({ words }: { readonly words: number }) => (
  <span aria-hidden="true">
    {Array.from({ length: words }, (_, n) => n).map((n) => (
      <span key={n}>
        <span className="word-room" />{' '}
      </span>
    ))}
  </span>
);
