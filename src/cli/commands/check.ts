import { say } from '../../language/speak.ts';
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
	if (!kind) throw new UsageError(say('cli.noKind', { kinds: KIND_NAMES.join(', '), received: word }), 'check');
	return kind;
}

/** `dyelot check`: how far one piece lies within a palette. */
export async function checkCommand(words: readonly string[]): Promise<number> {
	const { values, rest } = parsedWords('check', words);
	if (values.palette === undefined) throw new UsageError(say('cli.noPalette'), 'check');
	const kind = kindOf(values.kind);
	const palette = readPaletteFile(values.palette);
	for await (const { photo, result } of readInOrder(rest, {})) {
		if (!result.ok) {
			console.log(
				values.json
					? JSON.stringify({ photo, ok: false, reason: result.reason, message: result.message })
					: say('cli.notRead', { message: result.message }),
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
				say('cli.checked', {
					photo,
					verdict,
					percent: Math.round(percent),
					low: Math.round(low),
					high: Math.round(high),
				}),
			);
			console.log(`  ${sentence}`);
			if (advice) console.log(`  ${advice}`);
			console.log(say('cli.caution'));
		}
	}
	return 0;
}
