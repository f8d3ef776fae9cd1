import { record } from '../record.ts';

/** Bead of sealant behind one flange, mm: once round its edge, and a ring of twice the hole round each hole. */
export const beadLength = (width: number, height: number, holes: number, diameter: number): number =>
  2 * (width + height) + holes * Math.PI * 2 * diameter;

/** Volume of a round bead, cm³. */
export const beadVolume = (length: number, bead: number): number =>
  ((Math.PI / 4) * bead * bead * length) / 1000;

export const beadLengthRecord = record({
  id: 'BEAD_LENGTH',
  title: 'Sealant behind a flange',
  arguments: [
    { name: 'width', unit: 'mm', meaning: "The flange's width", least: 0 },
    { name: 'height', unit: 'mm', meaning: "The flange's height", least: 0 },
    { name: 'holes', unit: '–', meaning: 'How many holes it has', least: 0 },
    { name: 'diameter', unit: 'mm', meaning: "The bolts' diameter", least: 0 },
  ],
  unit: 'mm',
  formula: 'the flange’s edge once round, and for each hole a ring of twice the bolt’s diameter',
  source: 'plane geometry; where the beads go is common practice, no source',
  example: {
    given: [60, 120, 2, 10],
    answer: 485.663706143592,
    tolerance: 1e-9,
    source: 'by hand: 360 + 2 × 20π',
  },
  run: beadLength,
});

export const beadVolumeRecord = record({
  id: 'BEAD_VOLUME',
  title: 'Volume of a bead',
  arguments: [
    { name: 'length', unit: 'mm', meaning: "The bead's length", least: 0 },
    { name: 'bead', unit: 'mm', meaning: "The bead's diameter", least: 0 },
  ],
  unit: 'cm³',
  formula: 'π/4 × diameter² × length',
  source: 'volume of a cylinder; 1 cm³ = 1000 mm³',
  example: {
    given: [1000, 10],
    answer: 78.5398163397448,
    tolerance: 1e-9,
    source: 'by hand: 25π cm³',
  },
  run: beadVolume,
});
