import type { Session } from '../../session/session.ts';
import { useLook } from '../use-session.ts';
import { NewLimit } from './new-limit.tsx';
import { OwnLimitRow } from './own-limit-row.tsx';

const ownLimits = (session: Session) => session.plan.limits;

/** Limits that the owner sets on any result or own cell. */
export function OwnLimits() {
  const limits = useLook(ownLimits);
  return (
    <section className="own-cells-limits">
      <h3 className="type-section">Limits of your own</h3>
      <p className="type-small base-soft">
        They stand on the limit board beside the workbook’s, which they do not replace.
      </p>
      {limits.length > 0 && (
        <ul className="own-cells-list">
          {limits.map((limit) => (
            <OwnLimitRow key={limit.name} limit={limit} />
          ))}
        </ul>
      )}
      <NewLimit />
    </section>
  );
}
