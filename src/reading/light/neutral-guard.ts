import { chroma, type Lab65, linearFromLab, xyzFromLab } from '../../colour/lab65.ts';
import { say } from '../../language/speak.ts';
import type { CameraKind, LightModel, SeenNeutral } from '../../wardrobe/words/light.ts';
import type { NeutralJudgement, NeutralPoint } from '../../wardrobe/words/reading.ts';
import type { SeenPatch } from './eyedropper.ts';
import { type FrameLight, shareBrighter } from './frame-light.ts';
import { acrossOf, alongOf, stopsOf } from './lamp-casts.ts';
import { correctedBy, trueLuminance } from './light-model.ts';
import { contrastStops, modelFromNeutrals } from './neutral-model.ts';

/** What a neutral is judged against. */
export type Beside = {
	readonly frame: FrameLight;
	readonly camera: CameraKind;
	/** Colours of the cloth in the photo, uncorrected; empty for a scene. */
	readonly cloth: readonly { readonly lab: Lab65; readonly share: number }[];
};

export type JudgedNeutral = NeutralJudgement & { readonly neutral: SeenNeutral };

/** White paper, and the grey card that photographers use (18 % reflectance); common practice, no source. */
export const PAPER_LIGHTNESS = 95;
export const CARD_LIGHTNESS = 50;
/** What is this light in truth is treated as white. Measured: on 8 phone photos of a chart L* 81 does better as a grey, L* 96 as a white. */
const WHITE_FROM = 88;

/**
 * Casts, in stops: beyond `REFUSE` no lamp makes white paper look so; beyond `ASK` it may be a coloured thing. Measured on 12 photos of a chart and
 * on our renders under a bulb: bench/NOTES.md, Neutrals.
 */
const REFUSE = { warm: 1.75, cold: -1.1, across: 0.6 };
const ASK = { warm: 0.8, cold: -0.55, across: 0.4 };
/** CIELAB lightness in the photo under which white, and anything, is too dark to tell a light. */
const DARKEST_WHITE = 35;
const DARKEST = 15;
/** A white that a larger share of the picture outshines by a quarter is doubtful (a window may fill a tenth); not told as white, it is a grey from the smaller share on. */
const BRIGHTER_SHARE = { asked: 0.25, grey: 0.08 };
const BRIGHTER_FACTOR = 1.25;
/** Lightness in the photo from which something outshone is all the same a white, and under which it is a grey: between them nothing tells (greys of L* 51 in phone photos reach 72). */
const SURELY_WHITE = 74;
const SURELY_GREY = 62;
/** Stops over its surround from which a bright thing is rather a window or a lamp: paper on a black floor has 4.5, chart photos have 0.1 to 3.6. */
const WINDOW_STOPS = 4.5;
/** Share of the patch burnt out from which its colour is lost. */
const BURNT_SHARE = 0.6;
/** Cloth that comes out lighter than a perfect white by this factor cannot be, or is doubtful; and the share of it that must. */
const BEYOND = { refuse: 1.3, ask: 1.12, share: 0.15 };

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

/** How much lighter than a perfect white the lightest cloth that counts would come out. */
function clothBeyondWhite(neutral: SeenNeutral, model: LightModel, cloth: Beside['cloth']): number {
	const isWhite = neutral.kind === 'white';
	const out = cloth
		.filter(({ share }) => share >= BEYOND.share)
		.map(({ lab }) => {
			const Y = xyzFromLab(lab)[1];
			// Near its end a pressed curve runs away, so for a white the plain ratio judges.
			return isWhite ? (model.gain * Y) / model.full : trueLuminance(model, Y);
		});
	return Math.max(0, ...out);
}

/** Whether cloth that is nearly grey in the photo would come out clearly coloured: then a floor of wood was pointed at, since a lamp colours both alike. */
const coloursGreys = (model: LightModel, cloth: Beside['cloth']): boolean =>
	cloth.some(
		({ lab, share }) =>
			share >= BEYOND.share && chroma(lab) < GREY_CLOTH.under && chroma(correctedBy(model)(lab)) > GREY_CLOTH.comesOut,
	);

/** What is wrong with taking this for the neutral, the weightiest first: [refuse it, why]. */
function faultsOf(
	neutral: SeenNeutral,
	model: LightModel,
	{ burntShare }: SeenPatch,
	{ isTold, ...beside }: Beside & { readonly isTold: boolean },
): [boolean, string][] {
	const { seen, kind } = neutral;
	const cast = castOf(seen);
	const faults: [boolean, string][] = [];
	if (seen[0] < (kind === 'white' ? DARKEST_WHITE : DARKEST)) {
		faults.push([true, say('neutral.tooDark')]);
	}
	// Who says that a grey card lies there is believed: pale blue cloth looks grey under a warm lamp.
	const colours = kind === 'grey' && !isTold && coloursGreys(model, beside.cloth);
	if (isBeyond(cast, ASK) || colours) {
		const tooMuch = isBeyond(cast, REFUSE);
		const why = tooMuch ? 'tooColoured' : colours ? 'coloursGreys' : 'coloured';
		faults.push([tooMuch || colours, say(`neutral.${why}`, { hue: hueWord(cast) })]);
	}
	const { surround } = beside.frame;
	const stops = surround === null ? 0 : contrastStops(neutral, surround);
	if (burntShare >= BURNT_SHARE || stops > WINDOW_STOPS) {
		const isBoth = burntShare >= BURNT_SHARE && stops > WINDOW_STOPS;
		const fault = isBoth ? 'burntLamp' : burntShare >= BURNT_SHARE ? 'burnt' : 'lamp';
		faults.push([isBoth, say(`neutral.${fault}`)]);
	}
	const beyond = clothBeyondWhite(neutral, model, beside.cloth);
	if (beyond > BEYOND.ask) {
		faults.push([beyond > BEYOND.refuse, say('neutral.beyondWhite')]);
	}
	if (kind === 'white' && shareBrighter(beside.frame, xyzFromLab(seen)[1], BRIGHTER_FACTOR) > BRIGHTER_SHARE.asked) {
		faults.push([false, say('neutral.outshone')]);
	}
	return faults.sort((one, other) => Number(other[0]) - Number(one[0]));
}

/**
 * Whether what the user pointed at can be taken for a neutral, as which, and why. What is coloured, dark, burnt out, a window or a lamp, or would
 * push cloth beyond white is refused, or taken with a question that the user can answer (`sure`).
 */
export function judgedNeutral(point: NeutralPoint, patch: SeenPatch, beside: Beside): JudgedNeutral {
	const isBright = shareBrighter(beside.frame, xyzFromLab(patch.lab)[1], BRIGHTER_FACTOR) <= BRIGHTER_SHARE.grey;
	const isWhite = isBright || patch.lab[0] >= SURELY_WHITE;
	const lightness = point.lightness ?? (isWhite ? PAPER_LIGHTNESS : CARD_LIGHTNESS);
	const kind = lightness >= WHITE_FROM ? 'white' : 'grey';
	const neutral: SeenNeutral = { kind, seen: patch.lab, lightness };
	const model = modelFromNeutrals(
		{ white: kind === 'white' ? neutral : null, grey: kind === 'grey' ? neutral : null },
		beside.camera,
		beside.frame.surround,
	);
	const isOpen = point.lightness === undefined && !isBright && patch.lab[0] >= SURELY_GREY;
	const open: [boolean, string][] = isOpen ? [[false, say('neutral.open')]] : [];
	const [isRefused, fault] = [
		...faultsOf(neutral, model, patch, { ...beside, isTold: point.lightness !== undefined }),
		...open,
	][0] ?? [false, null];
	const judged = { kind, neutral, model } as const;
	if (isRefused) return { ...judged, answer: 'refused', sentence: say('neutral.refused', { fault: fault ?? '' }) };
	const why =
		point.lightness !== undefined ? 'taken' : isBright ? 'takenBrightest' : isWhite ? 'takenLight' : 'takenOutshone';
	const taken = say(`neutral.${why}`, { what: say(`neutral.${kind}`), lightness: Math.round(lightness) });
	if (fault === null || point.sure) return { ...judged, answer: 'taken', sentence: taken };
	return { ...judged, answer: 'asked', sentence: say('neutral.asked', { fault, taken }) };
}
