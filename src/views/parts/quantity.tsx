import type { Value } from '../../plan/plan.ts';
import { piecesOf } from './show.ts';
import { useUnits } from './use-units.ts';
import './quantity.css';

const DECIMALS = 2;

/** What stands unseen after a figure so that points lie under one another. */
function padding(figure: string): string {
  if (!/^[−\d.]+$/.test(figure)) return '';
  const point = figure.indexOf('.');
  const decimals = point < 0 ? 0 : figure.length - point - 1;
  const rest = '0'.repeat(Math.max(0, DECIMALS - decimals));
  return point < 0 ? `.${rest}` : rest;
}

interface Props {
  readonly value: Value;
  readonly unit: string;
  /** Lines the figure up with those above and below. */
  readonly aligned?: boolean;
}

/** A value as figure, unit, and the second unit where both are shown. */
export function Quantity({ value, unit, aligned = false }: Props) {
  const units = useUnits();
  const [first, second] = piecesOf(value, unit, units);
  const figure = first?.figure ?? '';
  return (
    <span className={aligned ? 'quantity quantity-aligned' : 'quantity'}>
      <span className="quantity-figure">
        {figure}
        {aligned && (
          <span className="quantity-padding" aria-hidden="true">
            {padding(figure)}
          </span>
        )}
      </span>
      <span className="quantity-unit type-small">
        {first?.unit}
        {second !== undefined && (
          <span className="quantity-second">
            {second.figure} {second.unit}
          </span>
        )}
      </span>
    </span>
  );
}
