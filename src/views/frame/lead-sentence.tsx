import type { ReactNode } from 'react';
import { useNothingRead } from '../parts/use-nothing-read.ts';
import { useUnits } from '../parts/use-units.ts';
import { WordRoom } from '../parts/word-room.tsx';
import { useJudgement, useReady } from '../use-session.ts';
import { FirstReadings } from './first-readings.tsx';
import { leadOf } from './lead.ts';

interface Props {
  /** What would mend a limit, as a sentence. */
  readonly mend?: ((limit: string) => ReactNode) | undefined;
}

/** What is outside, why, and what would mend it, or the first reading to take; under it, what these numbers are. */
export function LeadSentence({ mend }: Props) {
  return (
    <div className="lead" data-view="lead">
      {useNothingRead() ? <FirstReadings /> : <WhatIsOutside mend={mend} />}
      <p className="type-small base-soft">
        Estimates. The gear maker’s manual comes first; let a rigger, yard or surveyor look before you drill.{' '}
        <a className="lead-more" href="#/not-judged">
          Not covered
        </a>
      </p>
    </div>
  );
}

/** Words of what is outside and what would mend it, beyond those that say to wait. */
const WORDS = 18;

function WhatIsOutside({ mend }: Props) {
  const judgement = useJudgement();
  const units = useUnits();
  const ready = useReady();
  const lead = ready ? leadOf(judgement, units) : undefined;
  return (
    <>
      <p className="type-lead">
        {lead === undefined ? (
          <>
            The limits are being worked out. <WordRoom words={WORDS} />
          </>
        ) : (
          lead.says
        )}
        {lead?.mend !== undefined && mend !== undefined && <> {mend(lead.mend)}</>}
      </p>
      {lead === undefined ? (
        <p className="type-small">
          <WordRoom words={1} />
        </p>
      ) : (
        lead.more !== '' && <p className="type-small">{lead.more}</p>
      )}
    </>
  );
}
