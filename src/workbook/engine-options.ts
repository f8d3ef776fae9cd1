import { PLACES } from '../calc/limits/handed-out.ts';

/** How the formula engine is set up; the replay follows the same figures. */
export const OPTIONS = {
  licenseKey: 'gpl-v3',
  precisionRounding: PLACES,
  precisionEpsilon: 1e-13,
  undoLimit: 0,
  useWildcards: false,
  useRegularExpressions: false,
  useArrayArithmetic: false,
  useStats: false,
  dateFormats: [],
  timeFormats: [],
  currencySymbol: [],
  // Texts are compared as they are, the same on every machine.
  localeLang: 'en-US',
  language: 'enGB',
};
