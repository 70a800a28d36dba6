import { type Lab65, labFromXyz } from '../../colour/lab65.ts';
import { say } from '../../language/speak.ts';
import type { CameraKind, Light, LightModel, LightSource } from '../../wardrobe/words/light.ts';
import { errorOfNeutrals, errorOfNothing, type TellingNeutrals } from '../../wardrobe/words/light-error.ts';
import { type Correction, type NeutralJudgement, type NeutralPoint, neutralsOf } from '../../wardrobe/words/reading.ts';
import { BACKGROUND, isClothes, type LabelMap, type Pixels } from '../pixels.ts';
import { type SeenPatch, seenPatch } from './eyedropper.ts';
import { foundNeutrals } from './found-neutrals.ts';
import { type FrameLight, frameLight } from './frame-light.ts';
import { UNTOLD_PHONE } from './light-model.ts';
import { CARD_LIGHTNESS, type JudgedNeutral, judgedNeutral, PAPER_LIGHTNESS } from './neutral-guard.ts';
import { modelFromNeutrals, standTogether } from './neutral-model.ts';
import { shownLight } from './shown-light.ts';

/** A photo as far as its light is concerned. */
export type LitPicture = {
	readonly pixels: Pixels;
	/** Null for a scene: there nothing is background. */
	readonly labels: LabelMap | null;
	readonly camera: CameraKind;
	/** The clothes' colours, uncorrected; empty for a scene. */
	readonly cloth: readonly { readonly lab: Lab65; readonly share: number }[];
};

/** The light of a photo and the function that takes it out of a colour. */
export type LightCorrection = {
	readonly light: Light;
	/** What the photo says by itself, without group, ground or hand. */
	readonly ownLight: Light;
	readonly correct: (lab: Lab65) => Lab65;
	/** What was made of each neutral the user pointed at; absent where none was. */
	readonly neutrals?: readonly NeutralJudgement[];
};

type SeenPoint = { readonly point: NeutralPoint; readonly patch: SeenPatch };

const isOnCloth = (labels: LabelMap | null, { x, y }: NeutralPoint): boolean =>
	labels !== null && isClothes(labels.classes[Math.floor(y) * labels.widthPx + Math.floor(x)] ?? BACKGROUND);

/** Of two neutrals whose lightness nobody told, the brighter is the white paper and the other the grey card. */
function toldApart(seen: readonly SeenPoint[]): readonly SeenPoint[] {
	if (seen.length !== 2 || seen.some(({ point }) => point.lightness !== undefined)) return seen;
	const brighter = Math.max(...seen.map(({ patch }) => patch.lab[0]));
	return seen.map(({ point, patch }) => ({
		point: { ...point, lightness: patch.lab[0] === brighter ? PAPER_LIGHTNESS : CARD_LIGHTNESS },
		patch,
	}));
}

/** A light measured on neutrals of the photo itself. */
function measured(source: LightSource, model: LightModel, error: number, reason: string): Light {
	const [X, Y, Z] = model.white;
	const cast = labFromXyz([X * model.full, Y * model.full, Z * model.full]);
	return { source, cast, strength: 1, reason, model, error };
}

function untold(camera: CameraKind): Light {
	const reason = say(camera === 'phone' ? 'light.nothingPhone' : 'light.nothingCamera');
	const model = camera === 'phone' ? UNTOLD_PHONE : null;
	return { source: 'none', cast: null, strength: 0, reason, model, error: errorOfNothing(camera) };
}

/** The first white and the first grey that were not refused; null where there is neither. */
function tellingOf(judged: readonly JudgedNeutral[]): TellingNeutrals | null {
	const first = (kind: 'white' | 'grey') =>
		judged.find((one) => one.kind === kind && one.answer !== 'refused')?.neutral ?? null;
	const telling = { white: first('white'), grey: first('grey') };
	return telling.white || telling.grey ? telling : null;
}

/** Neutrals refused one and all, or those that are in doubt, for what they are together. */
const refusing = (judged: readonly JudgedNeutral[], why: (one: JudgedNeutral) => string | null): JudgedNeutral[] =>
	judged.map((one) => {
		const sentence = one.answer === 'refused' ? null : why(one);
		return sentence === null ? one : { ...one, answer: 'refused', sentence };
	});

/** Several neutrals judged together: one in doubt is not needed beside a certain one, and a white and a grey that no camera shows so tell nothing. */
function judgedTogether(judged: readonly JudgedNeutral[], camera: CameraKind): readonly JudgedNeutral[] {
	const isOneCertain = judged.some(({ answer, isCertain }) => answer === 'taken' && isCertain);
	const kept = isOneCertain
		? refusing(judged, ({ isCertain, sentence }) => (isCertain ? null : say('neutral.otherSurer', { sentence })))
		: judged;
	const telling = tellingOf(kept);
	if (!telling?.white || !telling.grey || standTogether(telling.white, telling.grey, camera)) return kept;
	return refusing(kept, () => say('neutral.unlike'));
}

const whichOf = ({ white, grey }: TellingNeutrals) => (white && grey ? 'both' : white ? 'white' : 'grey');

/** The light by what was pointed at. What is in doubt, also where the user insists on it, makes nothing surer. */
function fromPointed(judged: readonly JudgedNeutral[], camera: CameraKind, frame: FrameLight): Light | null {
	const telling = tellingOf(judged);
	if (!telling) return null;
	const sentences = judged.map(({ sentence }) => sentence).join(' ');
	const isCertain = judged.every((one) => one.answer === 'refused' || one.isCertain);
	const error = isCertain ? errorOfNeutrals(telling, camera, false) : errorOfNothing(camera);
	const reason = `${say(`light.pointed_${whichOf(telling)}`)} ${sentences}`;
	const light = measured('neutral-pointed', modelFromNeutrals(telling, camera, frame.surround), error, reason);
	return isCertain ? light : { ...light, strength: 0 };
}

function fromFound({ pixels, labels, camera }: LitPicture, frame: FrameLight): Light | null {
	const telling = labels && foundNeutrals(pixels, labels);
	if (!telling) return null;
	const model = modelFromNeutrals(telling, camera, frame.surround);
	const error = errorOfNeutrals(telling, camera, true);
	return measured('neutral-found', model, error, say(`light.found_${whichOf(telling)}`));
}

/**
 * The light of a photo, by the surest that there is: neutrals the user pointed at, as far as they can be taken for neutrals; a sheet or card found
 * beside the clothes; what its ground or its same-light group knows (`shared`); nothing. Steps by hand come on top of any. The points of
 * `correction` are in pixels of the analysed picture. No lamp is guessed: on real phones guesses made hue and chroma worse.
 */
export function lightOf(picture: LitPicture, correction: Correction, shared: Light | null): LightCorrection {
	const { pixels, camera, cloth } = picture;
	const frame = frameLight(pixels, picture.labels);
	const seen = neutralsOf(correction).map((point) => ({ point, patch: seenPatch(pixels, point.x, point.y) }));
	const judged = judgedTogether(
		toldApart(seen).map(({ point, patch }) =>
			judgedNeutral(point, patch, { frame, camera, cloth, isOnCloth: isOnCloth(picture.labels, point) }),
		),
		camera,
	);
	const refused = judged.filter(({ answer }) => answer === 'refused').map(({ sentence }) => sentence);
	const own =
		fromPointed(judged, camera, frame) ?? fromFound(picture, frame) ?? untold(frame.isFlat ? 'camera' : camera);
	const ownLight = own.source !== 'neutral-pointed' && refused.length > 0 ? saying(own, refused) : own;
	const { light, correct } = shownLight(ownLight, correction, shared);
	return {
		light,
		ownLight,
		correct,
		...(judged.length > 0
			? { neutrals: judged.map(({ neutral: _seen, isCertain: _certain, ...judgement }) => judgement) }
			: {}),
	};
}

const saying = (light: Light, sentences: readonly string[]): Light => ({
	...light,
	reason: [...sentences, light.reason].join(' '),
});
