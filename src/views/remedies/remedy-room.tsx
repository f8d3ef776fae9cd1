import { WordRoom } from '../parts/word-room.tsx';

/** Words of a remedy's sentence, as most have. */
const WORDS = 7;

/** Room for a remedy's sentence while it is being worked out. */
export const RemedyRoom = () => <WordRoom words={WORDS} />;
