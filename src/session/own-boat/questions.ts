/** The four things asked before the first reading. */
export interface Answers {
  readonly units?: 'mm' | 'in' | 'both';
  readonly lying?: 'afloat' | 'ashore';
  readonly lean?: 'aft' | 'upright' | 'forward';
  readonly manual?: 'yes' | 'no';
}

export type QuestionId = keyof Answers;

export interface Question {
  readonly id: QuestionId;
  readonly asks: string;
  readonly help: string;
  readonly answers: readonly { readonly word: string; readonly label: string; readonly means: string }[];
}

/** In the order they are asked. */
export const QUESTIONS: readonly Question[] = [
  {
    id: 'units',
    asks: 'What do you measure in?',
    help: 'You can still write the other unit beside any number, and change this later.',
    answers: [
      { word: 'mm', label: 'Millimetres', means: 'A bare number is in mm.' },
      { word: 'in', label: 'Inches', means: 'A bare number is in inches, such as 2 3/8.' },
      { word: 'both', label: 'Both', means: 'A bare number is in mm; results show inches too.' },
    ],
  },
  {
    id: 'lying',
    asks: 'Where is the boat now?',
    help: 'Heights count from the water in which the boat sails, so it matters whether you can see it.',
    answers: [
      { word: 'afloat', label: 'Afloat', means: 'Loaded as it sails, or nearly so.' },
      {
        word: 'ashore',
        label: 'On a cradle or trailer',
        means: 'You measure from the mark of the waterline.',
      },
    ],
  },
  {
    id: 'lean',
    asks: 'Which way does the transom lean?',
    help: 'Look at the boat from the side. Compare the upper edge of the transom with the lower one.',
    answers: [
      { word: 'aft', label: 'Aft', means: 'The top is further aft than the bottom.' },
      { word: 'upright', label: 'Upright', means: 'Top and bottom stand one above the other.' },
      { word: 'forward', label: 'Forward', means: 'The top is further forward: a reverse transom.' },
    ],
  },
  {
    id: 'manual',
    asks: 'Do you have the gear’s manual at hand?',
    help: 'The gear maker’s manual comes first. Measuring the gear itself serves as well.',
    answers: [
      {
        word: 'yes',
        label: 'Yes, or I can measure the gear',
        means: 'You are asked for three of its values.',
      },
      { word: 'no', label: 'No', means: 'The gear’s values stay stand-ins for now.' },
    ],
  },
];
