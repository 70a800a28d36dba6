import { say } from '../../language/speak.ts';
import type { ReadOptions, ReadResult } from '../../photo/readers/pool.ts';
import { CARD_LIGHTNESS, PAPER_LIGHTNESS } from '../../reading/light/neutral-guard.ts';
import { pieceName } from '../../wardrobe/pictures/piece-name.ts';
import type { NeutralPoint } from '../../wardrobe/words/reading.ts';
import { parsedWords } from '../parsed-words.ts';
import { numbersOf, wholeNumberOf } from '../points.ts';
import { readInOrder } from '../read-photos.ts';
import { UsageError } from '../usage.ts';

/** One line of `dyelot read --json`: a contract, see DEVELOPERS.md. */
export function jsonOfRead(photo: string, result: ReadResult): object {
	if (!result.ok) return { photo, ok: false, reason: result.reason, message: result.message };
	const { reading, shades, at, ms } = result;
	return {
		photo,
		ok: true,
		scene: reading.photoKind === 'scene',
		swatches: reading.swatches.map(({ lab, share, slot, name }) => ({ lab, share, slot, name })),
		...(shades ? { shades } : {}),
		...(at ? { at: at.map(({ x, y, lab, uncorrected }) => ({ x, y, lab, uncorrected })) } : {}),
		pieces: (reading.pieces ?? []).map((piece) => ({ ...piece, pattern: piece.pattern.type })),
		light: { source: reading.light.source, strength: reading.light.strength, reason: reading.light.reason },
		trust: { error: reading.trust.error, reasons: reading.trust.reasons },
		ms,
	};
}

const two = (n: number) => n.toFixed(1).padStart(6);

function textOfRead(photo: string, result: ReadResult): string {
	if (!result.ok) return say('cli.photoNotRead', { photo, message: result.message });
	const { reading, shades, at } = result;
	const lines = [`${photo}  (${reading.photoKind === 'scene' ? say('cli.scene') : reading.photoKind})`];
	for (const { lab, share, slot, name } of reading.swatches) {
		lines.push(
			`  ${String(Math.round(share * 100)).padStart(3)} %  L*a*b*${lab.map(two).join('')}  ${name}${slot ? `, ${slot}` : ''}`,
		);
	}
	for (const piece of reading.pieces ?? []) {
		const size = say('cli.ofFrame', { percent: String(Math.round(piece.share * 100)).padStart(3) });
		lines.push(`  ${size}: ${pieceName(piece, reading.trust)}${piece.kind ? '' : ` ${say('cli.kindUnsure')}`}`);
	}
	for (const { lab, share } of shades ?? [])
		lines.push(
			`  ${say('cli.shade', { percent: String(Math.round(share * 100)).padStart(3), lab: lab.map(two).join('') })}`,
		);
	for (const point of at ?? [])
		lines.push(
			`  ${say('cli.at', {
				x: point.x,
				y: point.y,
				lab: point.lab.map(two).join(''),
				before: point.uncorrected.map(two).join(''),
			})}`,
		);
	lines.push(`  ${say('cli.light', { reason: reading.light.reason })}`);
	lines.push(
		`  ${say('cli.error', {
			error: reading.trust.error.toFixed(0),
			reasons: reading.trust.reasons.join('; ') || say('cli.goodLight'),
		})}`,
	);
	if (reading.trust.advice) lines.push(`  ${reading.trust.advice}`);
	return `${lines.join('\n')}\n`;
}

/** `dyelot read`: what the program sees in each photo. */
export async function readCommand(words: readonly string[]): Promise<number> {
	const { values, rest: photos } = parsedWords('read', words);
	const shades = values.shades === undefined ? null : wholeNumberOf(values.shades);
	if (shades !== null && !(shades >= 1 && shades <= 64)) {
		throw new UsageError(say('cli.badShades', { received: values.shades ?? '' }), 'read');
	}
	const options: ReadOptions = {
		...(shades === null ? {} : { shades }),
		...(values.at
			? { at: values.at.map((text) => numbersOf(text, '--at', [2], 'read')).map(([x, y]) => ({ x: x!, y: y! })) }
			: {}),
		...(values.neutral ? { correction: { neutrals: neutralsFrom(values.neutral) } } : {}),
	};
	let failed = false;
	for await (const { photo, result } of readInOrder(photos, options)) {
		failed ||= !result.ok;
		console.log(values.json ? JSON.stringify(jsonOfRead(photo, result)) : textOfRead(photo, result));
	}
	return failed ? 1 : 0;
}

/** Words for a neutral's lightness, besides the number itself. */
const LIGHTNESS_OF: Readonly<Record<string, number>> = { white: PAPER_LIGHTNESS, grey: CARD_LIGHTNESS };
const MOST_NEUTRALS = 2;

function neutralsFrom(texts: readonly string[]): NeutralPoint[] {
	if (texts.length > MOST_NEUTRALS) {
		throw new UsageError(say('cli.neutralsTooMany', { count: texts.length }), 'read');
	}
	return texts.map(neutralFrom);
}

/** "X,Y", "X,Y,L" with the lightness it has in truth, or "X,Y,white" and "X,Y,grey". */
function neutralFrom(text: string): NeutralPoint {
	const [place, word] = /^(.*),(white|grey)$/.exec(text)?.slice(1) ?? [text];
	const [x, y, number] = numbersOf(place!, '--neutral', word ? [2] : [2, 3], 'read');
	const lightness = word ? LIGHTNESS_OF[word] : number;
	if (lightness !== undefined && (lightness < 20 || lightness > 100))
		throw new UsageError(say('cli.badLightness', { received: lightness }), 'read');
	return { x: x!, y: y!, ...(lightness === undefined ? {} : { lightness }) };
}
