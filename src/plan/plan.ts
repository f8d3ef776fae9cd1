/** What an input holds: a number in base units, yes/no, a listed word, or nothing yet. */
export type Value = number | boolean | string | null;

export type Origin = 'reading' | 'manual' | 'stand-in' | 'assumed' | 'choice';

/** An input as somebody read, took or chose it. */
export interface Reading {
  readonly value: Value;
  /** Set when the input follows other cells; `value` is then the last one worked out, or null. */
  readonly formula?: string;
  /** The text as typed, and the unit it was typed in. */
  readonly typed?: string;
  readonly unit?: string;
  /** Half-width within which the truth almost surely lies, base units. */
  readonly offBy?: number;
  /** One standard deviation instead of a half-width. */
  readonly normal?: true;
  readonly origin: Origin;
  readonly who?: string;
  readonly when?: string;
  readonly with?: string;
  readonly note?: string;
}

export interface Scenario {
  readonly name: string;
  readonly note?: string;
  readonly overrides: ReadonlyMap<string, Reading>;
}

/** A cell that the owner made. */
export interface OwnCell {
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number | null;
  readonly formula?: string;
  readonly note?: string;
}

/** A limit that the owner set on any result or own cell, in base units. */
export interface OwnLimit {
  readonly name: string;
  readonly result: string;
  readonly low?: number;
  readonly high?: number;
  readonly near: number;
  readonly note?: string;
}

/** What stands beside the numbers of one row of a survey table. */
export interface RowNote {
  readonly label?: string;
  /** As in `Reading`. */
  readonly offBy?: number;
  readonly normal?: true;
  readonly who?: string;
  readonly when?: string;
  readonly with?: string;
  readonly note?: string;
}

export interface SurveyTable {
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (number | null)[])[];
  /** One for each row, in the same order; absent when no row has any. */
  readonly notes?: readonly (RowNote | null)[];
}

/** How far one step of the fitting has come. */
export interface StepDone {
  readonly step: string;
  readonly done: boolean;
  /** What was read at its check, base units. */
  readonly value?: number;
  readonly who?: string;
  readonly when?: string;
  readonly note?: string;
}

/** A choice that a hole has fixed: what had been planned, and who locked it when. */
export interface Drilled {
  readonly planned: Value;
  readonly who?: string;
  readonly when?: string;
}

/** Something that stopped a step, as it was said when the work went on in spite of it. */
export interface StopPassed {
  readonly stop: string;
  /** How far it was beyond what is allowed, base units; absent where that has no size. */
  readonly by?: number;
  readonly says: string;
}

/** A step that was gone on with although something stopped it. */
export interface WentOn {
  readonly step: string;
  readonly because: string;
  readonly despite: readonly StopPassed[];
  readonly who?: string;
  readonly when?: string;
}

/** A tick that was taken off: whose it was, and who took it off when. */
export interface Unticked {
  readonly step: string;
  readonly tickedBy?: string;
  readonly tickedWhen?: string;
  readonly who?: string;
  readonly when?: string;
}

/** What was read and done on the day. */
export interface FitUp {
  /** Readings of what was really fitted, by the input they replace. */
  readonly fitted: ReadonlyMap<string, Reading>;
  /** Choices locked as they were drilled, by name. */
  readonly drilled: ReadonlyMap<string, Drilled>;
  readonly steps: readonly StepDone[];
  readonly wentOn: readonly WentOn[];
  readonly unticked: readonly Unticked[];
  /** Entries of the handover record, by name. */
  readonly handover: ReadonlyMap<string, string>;
}

export type Units = 'mm' | 'in' | 'both';

/** One study's settings: what was asked, never its points. */
export interface StudySettings {
  readonly study: string;
  readonly settings: Readonly<Record<string, string | number | boolean | readonly string[]>>;
}

/** The document. Never changed in place: an edit makes a new plan that shares all it left alone. */
export interface Plan {
  readonly title: string;
  readonly units: Units;
  readonly inputs: ReadonlyMap<string, Reading>;
  readonly limits: readonly OwnLimit[];
  readonly tables: readonly SurveyTable[];
  readonly ownCells: readonly OwnCell[];
  readonly notes: string;
  readonly scenarios: readonly Scenario[];
  /** Name of the scenario being looked at; null: the base values. */
  readonly active: string | null;
  /** Choices that are fixed because their holes are drilled. */
  readonly locked: ReadonlySet<string>;
  readonly studies: readonly StudySettings[];
  readonly fit: FitUp;
}

export const scenarioNamed = (plan: Plan, name: string | null): Scenario | undefined =>
  name === null ? undefined : plan.scenarios.find((it) => it.name === name);

/** The reading of an input in a scenario: its override, else the base. */
export const readingOf = (
  plan: Plan,
  name: string,
  scenario: string | null = plan.active,
): Reading | undefined => scenarioNamed(plan, scenario)?.overrides.get(name) ?? plan.inputs.get(name);
