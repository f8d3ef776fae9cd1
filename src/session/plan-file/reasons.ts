import type { Reason } from '../../plan/file/open-plan.ts';

/** What each reason for not opening a file is called, and what to do about it. */
export const REASONS: Readonly<Record<Reason, { readonly title: string; readonly next: string }>> = {
  'not a plan': {
    title: 'This is not a plan',
    next: 'Plan files end in .plan.json. Look for the file you saved, or ask whoever sent it for the plan file itself.',
  },
  'too new': {
    title: 'This plan comes from a newer workbook',
    next: 'Open it there, or reload this page while you are online so that it is brought up to date.',
  },
  damaged: {
    title: 'This plan is damaged',
    next: 'Its text stands below. Mend the place named and try again, or open an earlier copy.',
  },
  'too large': {
    title: 'This is larger than a plan can be',
    next: 'A plan has its caps so that it opens on any phone. Take out what is too long, or open an earlier copy.',
  },
  'step failed': {
    title: 'This older plan could not be brought up to date',
    next: 'Its text stands below and is not changed. Save it as it is; a later workbook may read it.',
  },
};
