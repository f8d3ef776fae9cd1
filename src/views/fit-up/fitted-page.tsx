import { fittedNames } from '../../fitting/fitted-names.ts';
import { BobReadings } from './bob-readings.tsx';
import { FittedRow } from './fitted-row.tsx';
import { SideBySide } from './side-by-side.tsx';
import { StrutLengths } from './strut-lengths.tsx';
import { useAsFitted } from './use-as-fitted.ts';
import { useWorkGiven } from './use-work.ts';
import { WhoField } from './who-field.tsx';

/** What was really fitted in the place of what was planned, and what follows from it. */
export function FittedPage() {
  const { ask } = useWorkGiven();
  const found = useAsFitted();
  return (
    <>
      <p className="type-lead">
        Enter what you read on the boat, one by one. The plan stays as it is; a field left empty follows it.
      </p>
      <WhoField />
      <section className="fit-up-section" aria-label="Readings">
        <h3 className="type-section">Readings</h3>
        {fittedNames(ask).map((name) => (
          <FittedRow key={name} name={name} />
        ))}
      </section>
      <BobReadings />
      <StrutLengths cuts={found?.cuts} />
      <SideBySide found={found} />
    </>
  );
}
