import type { InputName } from '../../plan/names.ts';
import { formatNumber } from '../../units/format-number.ts';
import { angleFigure, type Figure, lengthFigure, unread } from '../figure.ts';
import type { ShownUnit } from '../options.ts';
import type { Scene, Shape } from '../scene.ts';
import { number, type Values } from '../values.ts';
import { captionOf } from '../words.ts';
import { abovePictures } from './above-pictures.ts';
import { anglePictures } from './angle-pictures.ts';
import { benchFor, type Pictures } from './bench.ts';
import { boatPictures } from './boat-pictures.ts';
import { bracketPictures } from './bracket-pictures.ts';
import { camberPicture } from './camber-picture.ts';
import { layerPictures } from './layer-pictures.ts';
import { measuredShape, type Picture, windowOf } from './picture.ts';
import { rudderPictures } from './rudder-pictures.ts';
import { sectionPictures } from './section-pictures.ts';
import { shaftPictures } from './shaft-pictures.ts';
import { surveyPictures } from './survey-pictures.ts';
import { withTypical } from './typical.ts';

const pictures: Pictures = {
  ...boatPictures,
  transom_camber_radius: camberPicture,
  ...shaftPictures,
  ...rudderPictures,
  ...bracketPictures,
  ...sectionPictures,
  ...layerPictures,
  ...anglePictures,
  ...surveyPictures,
  ...abovePictures,
};

/** Inputs that have a picture of how they are measured. */
export const pictured: readonly string[] = Object.keys(pictures);

function figureOf(name: string, value: number | null, picture: Picture, unit: ShownUnit): Figure {
  if (value === null) return unread;
  if (picture.measured.kind === 'angle') return angleFigure(value);
  if (picture.measured.kind === 'area') return { first: formatNumber(value, 'mm²') };
  if (name === 'transom_camber_radius' && value === 0) return { first: 'flat' };
  return lengthFigure(value, unit);
}

/**
 * A small picture of one reading being taken: the part, cropped, with the one dimension lettered by its value, or by a
 * question mark while there is none. Null for an input that is not measured on the boat or the gear.
 */
export function readingPicture(
  name: string,
  values: Values,
  options: { readonly unit: ShownUnit },
): Scene | null {
  const draw = pictures[name as InputName];
  const bench = draw === undefined ? null : benchFor(withTypical(values));
  if (draw === undefined || bench === null) return null;
  const picture = draw(bench);
  const figure = figureOf(name, number(values, name as InputName), picture, options.unit);
  const shapes: Shape[] = [...picture.shapes, measuredShape(name, picture, figure)];
  return {
    kind: 'reading',
    title: `How to measure: ${captionOf(name).toLowerCase()}`,
    box: windowOf(picture),
    shapes,
    handles: [],
    rule: null,
    cropped: true,
  };
}
