import type { Readings, Stock } from './ask.ts';
import { EDGE, within } from './feet.ts';
import { Grid } from './grid.ts';
import { highestUpper, placed } from './rule.ts';
import { type Stack, stacksOf } from './stacks.ts';

/** A mount by the rule alone, before anything is judged: the brackets as far apart as face and shaft let them be. */
export function plainMount(by: Readings, { step, sheets, wedge }: Stock): readonly number[] {
  const grid = new Grid(step);
  const stacks = stacksOf({ sheets, readings: by });
  const half = by.lower_flange_height / 2 + EDGE;
  const lower = grid.near(within(by.transom_bottom + half, by.transom_bottom + half, by.transom_top - half));
  const upper = grid.near(Math.min(by.transom_top, highestUpper(lower, by)));
  const stack = stacks[Math.floor(stacks.length / 2)] as Stack;
  return placed({ struts: 2, stack, lower, upper, foot: 0.5, spread: 0.5, drop: 0 }, by, wedge, grid);
}
