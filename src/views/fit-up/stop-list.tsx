import { useState } from 'react';
import { keyOf } from '../../fitting/key.ts';
import { stopPoints } from '../../fitting/stop-points.ts';
import { bareUnit } from '../parts/length-style.ts';
import { Tick } from './tick.tsx';
import { useWorkGiven } from './use-work.ts';

/** Where the work stops until a reading is met: one screenful, for a phone at the boat. */
export function StopList() {
  const { ask, units } = useWorkGiven();
  const [open, setOpen] = useState<string>();
  return (
    <>
      <p className="fit-up-brief type-small">
        Go on only when the reading is met. If it is not, and a second try does not help, call the yard.
      </p>
      <ol className="fit-up-list fit-up-stops">
        {stopPoints(ask, bareUnit(units)).map(({ name, before, must, otherwise }) => (
          <li key={name} className="fit-up-step">
            <div className="fit-up-head">
              <Tick step={keyOf(`stop ${name}`)} label={before}>
                <span className="type-label">{before}</span>
                <span className="fit-up-must type-small">{must}</span>
              </Tick>
              <button
                type="button"
                className="fit-up-more base-plain-button type-small"
                aria-expanded={open === name}
                onClick={() => setOpen(open === name ? undefined : name)}
              >
                if not<span className="base-spoken">: {before}</span>
              </button>
            </div>
            {open === name && <p className="fit-up-otherwise type-small">{otherwise}</p>}
          </li>
        ))}
      </ol>
    </>
  );
}
