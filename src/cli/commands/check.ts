import { fitOf } from '../../wardrobe/fit/fit.ts';
import { appearanceOf } from '../../wardrobe/words/appearance.ts';
import { KIND_NAMES, type Kind } from '../../wardrobe/words/kind.ts';
import { readPaletteFile } from '../palette-file.ts';
import { parsedWords } from '../parsed-words.ts';
import { readInOrder } from '../read-photos.ts';
import { UsageError } from '../usage.ts';

function kindOf(word: string | undefined): Kind | null {
	if (word === undefined) return null;
	const kind = KIND_NAMES.find((one) => one === word);
	if (!kind)
		throw new UsageError(
			`Expected a kind of garment (${KIND_NAMES.join(', ')}) for --kind; received "${word}".`,
			'check',
		);
	return kind;
}

/** `dyelot check`: how far one piece lies within a palette. */
export async function checkCommand(words: readonly string[]): Promise<number> {
	const { values, rest } = parsedWords('check', words);
	if (values.palette === undefined)
		throw new UsageError('Expected --palette FILE for "check"; it is missing.', 'check');
	const kind = kindOf(values.kind);
	const palette = readPaletteFile(values.palette);
	for await (const { photo, result } of readInOrder(rest, {})) {
		if (!result.ok) {
			console.log(
				values.json
					? JSON.stringify({ photo, ok: false, reason: result.reason, message: result.message })
					: `not read: ${result.message}`,
			);
			return 1;
		}
		const guess = kind ?? result.reading.kindGuesses[0]?.kind ?? null;
		const appearance = appearanceOf(guess, [result.reading]);
		const { percent, low, high, verdict, sentence } = fitOf(appearance, palette);
		const { error, reasons, advice } = result.reading.trust;
		if (values.json) {
			const swatches = appearance.swatches.map(({ lab, share, slot, name }) => ({ lab, share, slot, name }));
			console.log(
				JSON.stringify({
					photo,
					ok: true,
					kind: guess,
					fit: { percent, low, high, verdict, sentence },
					swatches,
					trust: { error, reasons },
				}),
			);
		} else {
			console.log(
				`${photo}: ${verdict}, ${Math.round(percent)} of 100 (between ${Math.round(low)} and ${Math.round(high)} as far as the photo tells)`,
			);
			console.log(`  ${sentence}`);
			if (advice) console.log(`  ${advice}`);
			console.log('  A colour on a screen is not the cloth: look at the piece in daylight before you buy.');
		}
	}
	return 0;
}
