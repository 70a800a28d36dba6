import { say } from '../../src/language/speak.ts';
import { correctedPicture } from '../../src/reading/light/corrected-picture.ts';
import { lightOf } from '../../src/reading/light/light.ts';
import type { Kind } from '../../src/wardrobe/words/kind.ts';
import type { LightModel } from '../../src/wardrobe/words/light.ts';
import type { NeutralJudgement, NeutralPoint } from '../../src/wardrobe/words/reading.ts';
import { element } from './element.ts';
import { type PhotoInHand, readingInHand } from './reading-in-hand.ts';

/** Longest side of the two small pictures. */
const SHOWN_SIDE = 160;

/**
 * What is made of the white that was tapped, by the same rule as at home, and how it would change the picture. `piece`: what is marked and what it is;
 * null before anything is marked, and then the whole picture alone speaks for or against it.
 */
export function whiteInHand(
	inHand: PhotoInHand,
	point: NeutralPoint,
	piece: { readonly mask: Uint8Array; readonly kind: Kind } | null,
): NeutralJudgement {
	const { pixels, camera } = inHand;
	const read = piece && readingInHand(inHand, piece.mask, piece.kind, [point]);
	const neutrals =
		read?.neutrals ?? lightOf({ pixels, labels: null, camera, cloth: [] }, { neutrals: [point] }, null).neutrals!;
	return neutrals[0]!;
}

function smallPicture(source: HTMLCanvasElement, model: LightModel | null, words: string): HTMLElement {
	const canvas = document.createElement('canvas');
	const scale = Math.min(1, SHOWN_SIDE / Math.max(source.width, source.height));
	canvas.width = Math.max(1, Math.round(source.width * scale));
	canvas.height = Math.max(1, Math.round(source.height * scale));
	const context = canvas.getContext('2d', { willReadFrequently: true })!;
	context.drawImage(source, 0, 0, canvas.width, canvas.height);
	if (model) {
		const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height);
		context.putImageData(new ImageData(correctedPicture(data, model), width, height), 0, 0);
	}
	return element('figure', {}, canvas, element('figcaption', {}, words));
}

/**
 * What is wrong with the white that was tapped, with the picture before and after; `answered` hears whether it is white all the same. What was
 * refused cannot be kept.
 */
export function whiteQuestion(
	source: HTMLCanvasElement,
	{ answer, sentence, model }: NeutralJudgement,
	answered: (isWhite: boolean) => void,
): HTMLElement {
	const button = (words: string, isWhite: boolean) => {
		const made = element('button', { type: 'button' }, words);
		made.addEventListener('click', () => answered(isWhite));
		return made;
	};
	const after = say(answer === 'refused' ? 'pocket.afterRefused' : 'pocket.after');
	return element(
		'div',
		{ class: 'question' },
		element('p', {}, sentence),
		element(
			'div',
			{ class: 'row' },
			smallPicture(source, null, say('pocket.before')),
			smallPicture(source, model, after),
		),
		answer === 'asked'
			? element('p', { class: 'row' }, button(say('pocket.yesWhite'), true), button(say('pocket.noWhite'), false))
			: '',
	);
}
