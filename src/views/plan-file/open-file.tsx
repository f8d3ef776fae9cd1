import { type DragEvent, useCallback, useId, useState, useSyncExternalStore } from 'react';
import { guestsOf } from '../../session/plan-file/guests.ts';
import { useSession } from '../use-session.ts';
import { RefusedFile } from './refused-file.tsx';
import { Visitor } from './visitor.tsx';

interface Props {
  readonly onSaveText: (name: string, text: string) => void;
}

/** Opens a file, chosen or dropped; what it holds is shown before anything is kept. */
export function OpenFile({ onSaveText }: Props) {
  const session = useSession();
  const guests = guestsOf(session);
  const guest = useSyncExternalStore(
    guests.subscribe,
    useCallback(() => guests.guest, [guests]),
  );
  const id = useId();
  const [over, setOver] = useState(false);

  const take = (files: FileList | null): void => {
    const file = files?.[0];
    if (file !== undefined) void guests.open(file);
  };
  const onDrop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    take(event.dataTransfer.files);
  };
  return (
    <section className="plan-file-part">
      <h3 className="type-section">Open a file</h3>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way to what the field inside does */}
      <div
        className="plan-file-drop"
        data-over={over ? '' : undefined}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={onDrop}
      >
        <label className="type-small" htmlFor={id}>
          A plan file: choose one, or drop it here. You see what it would change first.
        </label>
        <input
          id={id}
          className="plan-file-choose"
          type="file"
          accept=".json,application/json"
          onChange={(event) => {
            take(event.target.files);
            // The same file may be chosen again once it is mended.
            event.target.value = '';
          }}
        />
      </div>
      {guest?.kind === 'visitor' && <Visitor guest={guest} onLeave={() => guests.leave()} />}
      {guest?.kind === 'refused' && (
        <RefusedFile
          key={guest.text}
          guest={guest}
          onTry={(text) => guests.tryText(guest.name, text)}
          onSaveText={onSaveText}
          onLeave={() => guests.leave()}
        />
      )}
    </section>
  );
}
