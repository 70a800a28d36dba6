import type { Language } from '../../colour/words/language.ts';
import { speak } from '../../language/speak.ts';
import type { SeasonInput } from '../../wardrobe/words/season-input.ts';
import { type JudgementName, judgeHere } from '../judging.ts';

/** A judgement as the thread is given it. */
export type JudgeTask = {
	readonly language: Language;
	readonly name: JudgementName;
	readonly input: SeasonInput;
	readonly asked: unknown;
};

/** Judges while the program goes on; see `judge-beside.ts`. */
export default async function judgeBeside({ language, name, input, asked }: JudgeTask): Promise<unknown> {
	speak(language);
	return judgeHere(name, input, asked as never);
}
