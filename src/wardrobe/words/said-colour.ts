import type { Lab65 } from '../../colour/lab65.ts';
import { colourWord } from '../../colour/words/colour-word.ts';
import { keepColour } from '../../language/kept-sentence.ts';
import { keepsSentences, spokenLanguage } from '../../language/speak.ts';

/** The word for a colour in the language spoken. `error`: the reading's expected error in CIEDE2000 units, 0 for a colour that nobody photographed. */
export const saidColour = (lab: Lab65, error = 0): string =>
	keepsSentences() ? keepColour(lab, error) : colourWord(lab, spokenLanguage(), error);
