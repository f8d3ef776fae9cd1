import { DUE, HANDOVER_ENTRIES, handoverLines } from '../../fitting/handover.ts';
import { setHandover } from '../../plan/edit.ts';
import { Action } from '../parts/action.tsx';
import { TextEntry } from '../parts/text-entry.tsx';
import { usePlan, useSession } from '../use-session.ts';
import { useWork } from './use-work.ts';

/** Hands a text to the browser as a file. */
function save(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/plain' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}

/** What was fitted, by whom and when, and what remains to be checked. */
export function HandoverRecord() {
  const session = useSession();
  const plan = usePlan();
  const steps = useWork();
  const lines = handoverLines({
    plan,
    units: plan.units,
    steps,
    planned: (name) => session.value(name),
  });
  const put = (name: string, label: string) => (text: string) =>
    session.edit(`Handover: ${label}`, (it) => setHandover(it, name, text.trim()));
  return (
    <>
      <p className="type-lead">For whoever sails with the gear or repairs it. It is kept in the plan file.</p>
      <div className="fit-up-fields fit-up-screen">
        {HANDOVER_ENTRIES.map(({ name, label, lines: rows }) => (
          <TextEntry
            key={name}
            label={label}
            value={plan.fit.handover.get(name) ?? ''}
            draftKey={`handover ${name}`}
            onPut={put(name, label)}
            input={`handover_${name}`}
            {...(rows === undefined ? {} : { lines: rows })}
          />
        ))}
      </div>
      <section className="fit-up-section fit-up-screen" aria-label="Still to check">
        <h3 className="type-section">Still to check</h3>
        {DUE.map(({ name, label, what }) => (
          <div key={name} className="fit-up-pair">
            <span className="fit-up-planned">
              <span className="type-label">{label}</span>
              <span className="type-small base-soft">{what}</span>
            </span>
            <TextEntry
              label={`Done by whom and when: ${label.toLowerCase()}`}
              value={plan.fit.handover.get(name) ?? ''}
              draftKey={`handover ${name}`}
              onPut={put(name, label)}
              input={`handover_${name}`}
            />
          </div>
        ))}
      </section>
      <section className="fit-up-section" aria-label="The record">
        <h3 className="type-section">The record</h3>
        <div className="fit-up-record type-small">
          {lines.map((line, i) =>
            line === '' ? null : line.endsWith(':') ? (
              <h4 key={`${i} ${line}`} className="type-small">
                {line.slice(0, -1)}
              </h4>
            ) : (
              <p key={`${i} ${line}`}>{line}</p>
            ),
          )}
        </div>
        <div className="fit-up-screen">
          <Action plate onPress={() => save(`${lines.join('\r\n')}\r\n`, 'handover-record.txt')}>
            Save as text
          </Action>{' '}
          <Action onPress={() => window.print()}>Print</Action>
        </div>
      </section>
    </>
  );
}
