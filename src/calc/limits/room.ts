import { record } from '../record.ts';
import { handedOut } from './handed-out.ts';
import { roomOf } from './judge.ts';

export const roomAboveRecord = record({
  id: 'ROOM_ABOVE',
  title: 'Room above a low bound',
  arguments: [
    { name: 'value', unit: '–', meaning: 'The value judged' },
    { name: 'low', unit: '–', meaning: 'The low bound' },
  ],
  unit: '–',
  formula: 'value less the low bound',
  source: 'definition',
  example: { given: [56, 50], answer: 6, tolerance: 0, source: 'by hand' },
  run: (value: number, low: number) => roomOf(handedOut(value), handedOut(low), undefined),
});

export const roomBelowRecord = record({
  id: 'ROOM_BELOW',
  title: 'Room below a high bound',
  arguments: [
    { name: 'value', unit: '–', meaning: 'The value judged' },
    { name: 'high', unit: '–', meaning: 'The high bound' },
  ],
  unit: '–',
  formula: 'the high bound less value',
  source: 'definition',
  example: { given: [56, 50], answer: -6, tolerance: 0, source: 'by hand' },
  run: (value: number, high: number) => roomOf(handedOut(value), undefined, handedOut(high)),
});

export const roomBetweenRecord = record({
  id: 'ROOM_BETWEEN',
  title: 'Room to the nearer of two bounds',
  arguments: [
    { name: 'value', unit: '–', meaning: 'The value judged' },
    { name: 'low', unit: '–', meaning: 'The low bound' },
    { name: 'high', unit: '–', meaning: 'The high bound' },
  ],
  unit: '–',
  formula: 'the lesser of value less the low bound and the high bound less value',
  source: 'definition',
  example: { given: [56, 50, 60], answer: 4, tolerance: 0, source: 'by hand' },
  run: (value: number, low: number, high: number) =>
    roomOf(handedOut(value), handedOut(low), handedOut(high)),
});
