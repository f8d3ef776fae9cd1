import { useMemo, useRef } from 'react';
import { layout } from '../../drawings/layout/layout.ts';
import { tablePicture } from '../../drawings/survey/table-picture.ts';
import { useBox } from '../parts/use-box.ts';
import { SceneSvg } from './scene-svg.tsx';
import './reading-picture.css';

/** How a row of a survey table is read. */
export function TablePicture({ table, row }: { readonly table: string; readonly row: number }) {
  const frame = useRef<HTMLDivElement>(null);
  const box = useBox(frame);
  const scene = useMemo(() => tablePicture(table), [table]);
  const placed = useMemo(
    () => (scene === null || box === undefined ? undefined : layout(scene, box)),
    [scene, box],
  );
  return (
    <div className="reading-picture" ref={frame}>
      {placed !== undefined && <SceneSvg layout={placed} ids={`${table}-${row}-`} />}
    </div>
  );
}
