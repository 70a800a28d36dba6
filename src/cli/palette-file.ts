import { readFileSync } from 'node:fs';
import type { Lab65 } from '../colour/lab65.ts';
import { say } from '../language/speak.ts';
import { meaningOfSystemError } from '../store/system-error.ts';
import { PALETTE_ROLES, type Palette, type PaletteColour } from '../wardrobe/words/palette-colour.ts';

function colourFrom(value: unknown, index: number, file: string): PaletteColour {
	const given = (value ?? {}) as Partial<PaletteColour>;
	const lab = given.lab as Lab65 | undefined;
	if (!Array.isArray(lab) || lab.length !== 3 || !lab.every(Number.isFinite)) {
		throw new Error(
			say('cli.badLab', {
				number: index + 1,
				file,
				received: JSON.stringify(given.lab) ?? say('paletteEdits.nothing'),
			}),
		);
	}
	return {
		id: `colour-${index + 1}`,
		lab,
		spread: Number.isFinite(given.spread) ? given.spread! : 0,
		weight: Number.isFinite(given.weight) ? given.weight! : 0,
		role: PALETTE_ROLES.find((role) => role === given.role) ?? 'main',
		name: String(given.name ?? ''),
		label: '',
		photos: Number(given.photos ?? 0),
		firmness: Number(given.firmness ?? 1),
		locked: false,
		origin: 'derived',
	};
}

/** The palette that "dyelot palette --json" printed. Throws an `Error` that says what is wrong with the file. */
function paletteFromFile(text: string, file: string): Palette {
	let parsed: unknown;
	try {
		parsed = JSON.parse(text);
	} catch (error) {
		throw new Error(say('cli.badJson', { file, error: (error as Error).message }));
	}
	const colours = (parsed as { colours?: unknown } | null)?.colours;
	if (!Array.isArray(colours) || colours.length === 0) throw new Error(say('cli.noColours', { file }));
	return { colours: colours.map((colour, index) => colourFrom(colour, index, file)) };
}

/** The palette in a file. Throws an `Error` that says what is wrong with it, or why it cannot be opened. */
export function readPaletteFile(path: string): Palette {
	let text: string;
	try {
		text = readFileSync(path, 'utf8');
	} catch (error) {
		const meaning = meaningOfSystemError(error);
		throw meaning === null ? error : new Error(say('cli.noPaletteFile', { path, meaning }));
	}
	return paletteFromFile(text, path);
}
