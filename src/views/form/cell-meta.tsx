import { useCallback } from 'react';
import { type Origin, type Reading, readingOf } from '../../plan/plan.ts';
import { isStandIn } from '../../plan/stand-ins.ts';
import type { InputCell } from '../../plan/template.ts';
import { backingOf } from '../../session/backing.ts';
import type { Session } from '../../session/session.ts';
import { formatLength } from '../../units/format-length.ts';
import { formatNumber } from '../../units/format-number.ts';
import { Icon } from '../parts/icon.tsx';
import { bareUnit } from '../parts/length-style.ts';
import { shortOf, shown } from '../parts/show.ts';
import { useUnits } from '../parts/use-units.ts';
import { useLook, useReading, useSession } from '../use-session.ts';

const ORIGIN: Readonly<Record<Origin, string>> = {
  reading: 'reading',
  manual: 'gear’s manual',
  'stand-in': 'stand-in',
  assumed: 'assumed',
  choice: '',
};

/** The base's reading of an input, where the scenario shown has another value. */
const otherBase = (session: Session, name: string): Reading | undefined => {
  const { plan } = session;
  const base = readingOf(plan, name, null);
  const here = readingOf(plan, name);
  return base?.value === here?.value && base?.formula === here?.formula ? undefined : base;
};

interface Props {
  readonly cell: InputCell;
  /** Why it does not count now. */
  readonly unused: string | undefined;
}

/** Where a value comes from and how far it may be off, in words. */
export function CellMeta({ cell, unused }: Props) {
  const session = useSession();
  const unit = bareUnit(useUnits());
  const reading = useReading(cell.name);
  const base = useLook(useCallback((it: Session) => otherBase(it, cell.name), [cell.name]));
  const standIn = useLook(useCallback((it: Session) => isStandIn(it.plan, cell.name), [cell.name]));
  const locked = useLook(useCallback((it: Session) => it.plan.locked.has(cell.name), [cell.name]));
  const words: string[] = [];
  if (reading?.formula !== undefined) {
    const { plan } = session;
    const { pieces } = backingOf(reading.formula, plan, () => null);
    const names = pieces.flatMap((piece) => (piece.kind === 'cell' ? [shortOf(piece.name, plan)] : []));
    words.push(`from ${[...new Set(names)].join(', ')}`);
    if (standIn) words.push(ORIGIN['stand-in']);
  } else if (reading !== undefined && ORIGIN[reading.origin] !== '') {
    words.push(ORIGIN[reading.origin]);
  }
  const offBy = reading?.offBy ?? 0;
  if (offBy > 0 && unused === undefined) {
    words.push(
      `off by ${cell.unit === 'mm' ? formatLength(offBy, { unit }) : formatNumber(offBy, cell.unit)}`,
    );
  }
  if (unused !== undefined) words.push(unused);
  if (base !== undefined) words.push(`${shown(base.value, cell.unit, unit)} in the base values`);
  return (
    <>
      {locked && (
        <span className="cell-locked">
          <Icon name="lock" /> already drilled
        </span>
      )}
      {words.length > 0 && <span>{words.join(' · ')}</span>}
    </>
  );
}
