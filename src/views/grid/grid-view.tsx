import { type MouseEvent, useCallback, useEffect, useRef, useState } from 'react';
import { pointAt } from '../parts/pointed.ts';
import { useBox } from '../parts/use-box.ts';
import { useSession } from '../use-session.ts';
import { BackingColumn } from './backing/backing-column.tsx';
import type { Outcome } from './put-many.ts';
import { type GridPage, isCellRow } from './rows.ts';
import type { Chosen } from './table/chosen.ts';
import { type GridTable, mountTable } from './table/mount.ts';
import './grid-view.css';

interface Props {
  /** One page of the workbook; all of them when absent. */
  readonly page?: GridPage;
  /** A cell to be shown chosen, as asked for by the page's address. */
  readonly asked?: string | undefined;
}

const outcomeWords = ({ taken, refused }: Outcome): string =>
  [
    taken > 0 ? `${taken} ${taken === 1 ? 'value' : 'values'} taken` : '',
    refused > 0 ? `${refused} refused; choose one to see why` : '',
  ]
    .filter((words) => words !== '')
    .join(', ');

const NO_FILL =
  'Nothing was filled in: choose two cells or more of one column, the first of which holds a value of yours.';

/** The workbook as a boatbuilder's table of offsets, and beside it what stands behind the chosen cell. */
export function GridView({ page, asked }: Props) {
  const session = useSession();
  const frame = useRef<HTMLDivElement>(null);
  const backing = useRef<HTMLElement>(null);
  const table = useRef<GridTable>(undefined);
  const box = useBox(frame);
  const [chosen, setChosen] = useState<Chosen>();
  const [told, setTold] = useState('');

  useEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const mounted = mountTable(element, session, page, {
      onChoose: (now) => {
        setChosen(now);
        setTold('');
        pointAt(isCellRow(now.row) ? now.row.name : undefined);
      },
      onExplain: () => backing.current?.focus(),
      onMany: (outcome) => setTold(outcomeWords(outcome)),
      onNoFill: () => setTold(NO_FILL),
    });
    table.current = mounted;
    return () => {
      table.current = undefined;
      pointAt(undefined);
      mounted.destroy();
    };
  }, [session, page]);

  useEffect(() => {
    if (box !== undefined) table.current?.resize();
  }, [box]);

  useEffect(() => {
    if (asked !== undefined) table.current?.choose(asked);
  }, [asked]);

  /** A name in the backing leads to its row here rather than to its page. */
  const follow = useCallback((event: MouseEvent): void => {
    const link = event.target instanceof Element ? event.target.closest('a[href^="#/"]') : null;
    const name = link?.getAttribute('href')?.split('/').at(-1);
    if (name !== undefined && table.current?.choose(name) === true) event.preventDefault();
  }, []);

  return (
    <div className="grid">
      <div className="grid-columns">
        <div className="grid-frame" data-view="grid" ref={frame} />
        <BackingColumn
          ref={backing}
          chosen={chosen}
          told={told}
          onLeave={() => table.current?.focus()}
          onFollow={follow}
        />
      </div>
    </div>
  );
}
