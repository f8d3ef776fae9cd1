const CHOICES: readonly (readonly [value: number, word: string])[] = [
  [0, 'not at all'],
  [0.5, 'half'],
  [1, 'wholly'],
];

interface Props {
  readonly share: number;
  /** Instruments with which more than one reading was taken, and how many. */
  readonly tools: readonly (readonly [tool: string, count: number])[];
  readonly onPick: (share: number) => void;
}

/** How far readings with one instrument share their error. */
export function ShareSetting({ share, tools, onPick }: Props) {
  if (tools.length === 0) {
    return (
      <p className="type-small base-soft">
        No two readings say that they were taken with the same instrument, so that each is off by itself.
      </p>
    );
  }
  const names = tools.map(([tool, count]) => `${count} with the ${tool}`).join(', ');
  return (
    <fieldset className="odds-share type-small">
      <legend>Readings taken with one instrument ({names}) share their error</legend>
      {CHOICES.map(([value, word]) => (
        <label key={word}>
          <input type="radio" name="odds-share" checked={share === value} onChange={() => onPick(value)} />
          {word}
        </label>
      ))}
    </fieldset>
  );
}
