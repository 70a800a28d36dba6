import { deltaE2000 } from '../../colour/delta-e.ts';
import { chroma, type Lab65, linearFromLab } from '../../colour/lab65.ts';
import { luminanceOfLinear } from '../../colour/luminance.ts';
import { say } from '../../language/speak.ts';
import type { CameraKind, LightModel, SeenNeutral } from '../../wardrobe/words/light.ts';
import type { NeutralJudgement, NeutralPoint } from '../../wardrobe/words/reading.ts';
import { saidColour } from '../../wardrobe/words/said-colour.ts';
import type { SeenPatch } from './eyedropper.ts';
import { type FrameLight, shareOf } from './frame-light.ts';
import { acrossOf, alongOf, stopsOf } from './lamp-casts.ts';
import { correctedBy, trueLuminance } from './light-model.ts';
import { contrastStops, modelFromNeutrals } from './neutral-model.ts';

/** What a neutral is judged against. */
export type Beside = {
	readonly frame: FrameLight;
	readonly camera: CameraKind;
	/** Colours of the cloth in the photo, uncorrected, the largest first; empty for a scene. */
	readonly cloth: readonly { readonly lab: Lab65; readonly share: number }[];
	/** Whether the point lies on the cloth. */
	readonly isOnCloth: boolean;
};

export type JudgedNeutral = NeutralJudgement & {
	readonly neutral: SeenNeutral;
	/** Taken without a doubt, not because the user insisted: only then it makes the colours surer. */
	readonly isCertain: boolean;
};

/** White paper, and the grey card that photographers use (18 % reflectance); common practice, no source. */
export const PAPER_LIGHTNESS = 95;
export const CARD_LIGHTNESS = 50;
/** What is this light in truth is treated as white. Measured: on 8 phone photos of a chart L* 81 does better as a grey, L* 96 as a white. */
const WHITE_FROM = 88;

/**
 * Casts, in stops: beyond `REFUSE` no lamp makes white paper look so; beyond `ASK` it may be a coloured thing. Measured on 12 photos of a chart, white things
 * in phone photos of clothes (0.5 warm at most) and our renders under a bulb: bench/NOTES.md, Neutrals.
 */
const REFUSE = { warm: 1.75, cold: -1.1, across: 0.6 };
const ASK = { warm: 0.8, cold: -0.55, across: 0.4 };
/** What nobody calls white may look less warm than that: pale boards and cream do from here on. */
const ASK_UNTOLD = { ...ASK, warm: 0.5 };
/** CIELAB lightness in the photo under which white, and anything, is too dark to tell a light. */
const DARKEST_WHITE = 35;
const DARKEST = 15;
/** Lightness in the photo from which something is rather white than grey where nobody says it: greys of L* 51 in phone photos reach 72. */
const SURELY_WHITE = 74;
/** Stops over its surround from which a bright thing is rather a window or a lamp: paper on a black floor has 4.5, chart photos have 0.1 to 3.6. */
const WINDOW_STOPS = 4.5;
/** CIELAB lightness in the photo under which nothing is a window or a lamp: cameras nearly burn those out. */
const DARKEST_WINDOW = 90;
/** Share of the patch burnt out from which its colour is lost. */
const BURNT_SHARE = 0.6;
/**
 * Nothing in the light of a white reflects more than all of it. Times a perfect white: the brightest colours of a chart come out at up to 1.14 by its white, in
 * their strongest channel, since phones press the lights and add saturation, and its white at up to 1.36 by its grey. Cloth beyond the limits is doubtful, or
 * cannot be; `share` of it must be.
 */
const CLOTH_BEYOND = { ask: 1.22, refuse: { white: 1.75, grey: 1.4 }, share: 0.15 };
/**
 * And the picture as a whole: a larger share of it than that beyond so many times a perfect white, and the white lies in the shade of the rest, or is none.
 * White things in phone photos of clothes leave up to 0.1 beyond the first limit, a vivid jacket in the sun 0.17; walls and floors in the shade 0.16 to 0.9.
 */
const OUTSHONE = { ask: { beyond: 1.22, share: 0.1 }, refuse: { beyond: 1.53, share: 0.33 } };

/** What lies on the cloth and is no further than that from its main colour, which is so large a share of it, is the cloth itself. */
const CLOTH_ITSELF = { within: 10, share: 0.5 };

/** Chroma under which cloth is nearly grey in the photo, and over which it is clearly coloured. */
const GREY_CLOTH = { under: 12, comesOut: 18 };

function castOf(seen: Lab65): { along: number; across: number } {
	const [r, g, b] = linearFromLab(seen).map((channel) => Math.max(channel, 1e-4)) as [number, number, number];
	const cast = stopsOf(r, g, b);
	return { along: alongOf(cast), across: acrossOf(cast) };
}

const hueWord = ({ along, across }: { along: number; across: number }): string => {
	const isAcross = Math.abs(across) > Math.abs(along) / 2;
	return say(`neutral.${isAcross ? (across > 0 ? 'pink' : 'green') : along > 0 ? 'orange' : 'blue'}`);
};

const isBeyond = ({ along, across }: { along: number; across: number }, limit: typeof ASK): boolean =>
	along > limit.warm || along < limit.cold || Math.abs(across) > limit.across;

/** A number told from linear red, green and blue. */
type OfLight = (r: number, g: number, b: number) => number;

/**
 * How many times a perfect white something in the picture would reflect by this neutral: in its strongest channel by a white, in all by a grey, whose curve
 * runs away in a single one.
 */
function reflectedBy({ kind, seen }: SeenNeutral, model: LightModel): OfLight {
	if (kind === 'grey') return (r, g, b) => trueLuminance(model, luminanceOfLinear(r, g, b));
	const [R, G, B] = linearFromLab(seen).map((channel) => Math.max(channel, 1e-4)) as [number, number, number];
	return (r, g, b) => model.gain * Math.max(r / R, g / G, b / B);
}

/** How many times a perfect white the lightest cloth that counts would reflect. */
function clothReflects(reflected: OfLight, cloth: Beside['cloth']): number {
	const counting = cloth.filter(({ share }) => share >= CLOTH_BEYOND.share).map(({ lab }) => linearFromLab(lab));
	return Math.max(0, ...counting.map(([r, g, b]) => reflected(r, g, b)));
}

const isOutshone = (reflected: OfLight, frame: FrameLight, { beyond, share }: typeof OUTSHONE.ask): boolean =>
	shareOf(frame, (r, g, b) => reflected(r, g, b) > beyond) > share;

/** Whether cloth that is nearly grey in the photo would come out clearly coloured: then a floor of wood was pointed at, since a lamp colours both alike. */
const coloursGreys = (model: LightModel, cloth: Beside['cloth']): boolean =>
	cloth.some(
		({ lab, share }) =>
			share >= CLOTH_BEYOND.share &&
			chroma(lab) < GREY_CLOTH.under &&
			chroma(correctedBy(model)(lab)) > GREY_CLOTH.comesOut,
	);

const isMainColour = (seen: Lab65, [main]: Beside['cloth']): boolean =>
	main !== undefined && main.share >= CLOTH_ITSELF.share && deltaE2000(seen, main.lab) <= CLOTH_ITSELF.within;

/** A neutral that is tried out, and the light it would tell. */
type Tried = { readonly neutral: SeenNeutral; readonly model: LightModel; readonly reflected: OfLight };

function triedAs(seen: Lab65, lightness: number, { camera, frame }: Beside): Tried {
	const kind = lightness >= WHITE_FROM ? 'white' : 'grey';
	const neutral: SeenNeutral = { kind, seen, lightness };
	const told = { white: kind === 'white' ? neutral : null, grey: kind === 'grey' ? neutral : null };
	const model = modelFromNeutrals(told, camera, frame.surround);
	return { neutral, model, reflected: reflectedBy(neutral, model) };
}

/** Something wrong with a neutral: whether it cannot be one, and why. */
type Fault = readonly [isRefused: boolean, why: string];

/** What the thing itself looks wrong for: too dark, coloured, burnt out, a lamp. */
function ownFaults(
	neutral: SeenNeutral,
	{ burntShare }: SeenPatch,
	{ surround }: FrameLight,
	isTold: boolean,
): Fault[] {
	const { seen, kind } = neutral;
	const cast = castOf(seen);
	const faults: Fault[] = [];
	if (seen[0] < (kind === 'white' ? DARKEST_WHITE : DARKEST)) faults.push([true, say('neutral.tooDark')]);
	const isTooMuch = isBeyond(cast, REFUSE);
	if (isBeyond(cast, isTold ? ASK : ASK_UNTOLD)) {
		faults.push([isTooMuch, say(isTooMuch ? 'neutral.tooColoured' : 'neutral.coloured', { hue: hueWord(cast) })]);
	}
	const isBurnt = burntShare >= BURNT_SHARE;
	const isLamp = seen[0] >= DARKEST_WINDOW && surround !== null && contrastStops(neutral, surround) > WINDOW_STOPS;
	if (isBurnt || isLamp) {
		const fault = isBurnt && isLamp ? 'burntLamp' : isBurnt ? 'burnt' : 'lamp';
		faults.push([isBurnt && isLamp, say(`neutral.${fault}`)]);
	}
	return faults;
}

/** What it would make of the rest: cloth or picture beyond white, greys coloured. Who says that a grey card lies there is believed: pale blue cloth looks grey under a warm lamp. */
function faultsBeside(
	{ neutral, model, reflected }: Tried,
	{ frame, cloth, isOnCloth }: Beside,
	isTold: boolean,
): Fault[] {
	const faults: Fault[] = [];
	if (neutral.kind === 'grey' && !isTold && coloursGreys(model, cloth)) {
		faults.push([true, say('neutral.coloursGreys', { hue: hueWord(castOf(neutral.seen)) })]);
	}
	const reflects = clothReflects(reflected, cloth);
	if (reflects > CLOTH_BEYOND.ask)
		faults.push([reflects > CLOTH_BEYOND.refuse[neutral.kind], say('neutral.beyondWhite')]);
	if (neutral.kind === 'white' && isOutshone(reflected, frame, OUTSHONE.ask)) {
		faults.push([isOutshone(reflected, frame, OUTSHONE.refuse), say('neutral.outshone')]);
	}
	if (isOnCloth && isMainColour(neutral.seen, cloth)) faults.push([false, say('neutral.itself')]);
	return faults;
}

/** White or grey? With what it would make of the cloth, where there is any. */
function openQuestion(white: Tried, grey: Tried, [main]: Beside['cloth']): string {
	if (!main) return say('neutral.open');
	const made = ({ model }: Tried) => saidColour(correctedBy(model)(main.lab));
	return say('neutral.openCloth', { white: made(white), grey: made(grey) });
}

/**
 * Whether what the user pointed at can be taken for a neutral, as which, and why. What is coloured, dark, burnt out, a window or a lamp, what the picture outshines, or
 * would push cloth beyond white is refused, or taken with a question that the user can answer (`sure`). So is what nobody calls white or grey, unless
 * it is light and next to nothing outshines it: then it is white.
 */
export function judgedNeutral(point: NeutralPoint, patch: SeenPatch, beside: Beside): JudgedNeutral {
	const isTold = point.lightness !== undefined;
	const white = triedAs(patch.lab, PAPER_LIGHTNESS, beside);
	const isBrightest = !isOutshone(white.reflected, beside.frame, OUTSHONE.ask);
	const isLight = patch.lab[0] >= SURELY_WHITE;
	const lightness = point.lightness ?? (isBrightest || isLight ? PAPER_LIGHTNESS : CARD_LIGHTNESS);
	const tried = triedAs(patch.lab, lightness, beside);
	const faults = [...ownFaults(tried.neutral, patch, beside.frame, isTold), ...faultsBeside(tried, beside, isTold)];
	if (!isTold && !(isBrightest && isLight)) {
		faults.push([false, openQuestion(white, triedAs(patch.lab, CARD_LIGHTNESS, beside), beside.cloth)]);
	}
	const [isRefused, fault] = faults.sort((one, other) => Number(other[0]) - Number(one[0]))[0] ?? [false, null];
	const { neutral, model } = tried;
	const judged = { kind: neutral.kind, neutral, model, isCertain: fault === null } as const;
	if (isRefused) return { ...judged, answer: 'refused', sentence: say('neutral.refused', { fault: fault ?? '' }) };
	const why = isTold ? 'taken' : isBrightest ? 'takenBrightest' : isLight ? 'takenLight' : 'takenOutshone';
	const taken = say(`neutral.${why}`, { what: say(`neutral.${neutral.kind}`), lightness: Math.round(lightness) });
	if (fault === null) return { ...judged, answer: 'taken', sentence: taken };
	if (point.sure) return { ...judged, answer: 'taken', sentence: say('neutral.insisted', { fault, taken }) };
	return { ...judged, answer: 'asked', sentence: say('neutral.asked', { fault, taken }) };
}
