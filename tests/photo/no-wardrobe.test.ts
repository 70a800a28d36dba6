import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { readPhoto } from '../../src/photo/read-photo.ts';
import type { Reading } from '../../src/wardrobe/words/reading.ts';

const [width, height] = [600, 450];

/** Drawn by hand below: no photo of anybody. */
const DRAWINGS: Readonly<Record<string, string>> = {
	'a face': `<rect width="600" height="450" fill="#9db7c9"/><ellipse cx="300" cy="240" rx="130" ry="170" fill="#d9a88a"/>
		<path d="M165 230 Q170 60 300 60 Q430 60 435 230 Q400 120 300 125 Q200 120 165 230" fill="#3a2a20"/>
		<ellipse cx="250" cy="220" rx="16" ry="9" fill="#222"/><ellipse cx="350" cy="220" rx="16" ry="9" fill="#222"/>
		<path d="M250 330 Q300 360 350 330" stroke="#a04040" stroke-width="8" fill="none"/>`,
	'a crowd': `<rect width="600" height="450" fill="#b9b4aa"/>${Array.from({ length: 24 }, (_, at) => {
		const [x, y] = [30 + (at % 8) * 72, 40 + Math.floor(at / 8) * 140];
		return `<circle cx="${x + 15}" cy="${y}" r="11" fill="#c99a7c"/><rect x="${x}" y="${y + 12}" width="30" height="42" fill="hsl(${at * 47},45%,40%)"/><rect x="${x + 2}" y="${y + 54}" width="26" height="46" fill="hsl(${at * 91},30%,25%)"/>`;
	}).join('')}`,
	'a rail in a shop': `<rect width="600" height="450" fill="#e4e0d8"/><rect y="60" width="600" height="8" fill="#666"/>${Array.from(
		{ length: 20 },
		(_, at) =>
			`<path d="M${at * 30} 90 l14 -24 l14 24 l2 280 l-30 0 z" fill="hsl(${at * 53},40%,${30 + ((at * 7) % 40)}%)"/>`,
	).join('')}`,
	'a drawing': `<rect width="600" height="450" fill="#fbf9f2"/><g stroke="#111" stroke-width="4" fill="none"><circle cx="300" cy="80" r="36"/>
		<path d="M300 116 V280 M300 150 L230 230 M300 150 L370 230 M300 200 L240 340 H360 Z M270 340 V430 M330 340 V430"/></g>`,
	'a patterned sofa': `<defs><pattern id="p" width="26" height="26" patternUnits="userSpaceOnUse"><rect width="26" height="26" fill="#7b3b45"/><circle cx="13" cy="13" r="7" fill="#d8b98f"/></pattern></defs>
		<rect width="600" height="450" fill="#ded8cd"/><rect y="350" width="600" height="100" fill="#96704f"/>
		<rect x="90" y="140" width="420" height="120" rx="24" fill="url(#p)"/><rect x="70" y="230" width="460" height="110" rx="18" fill="url(#p)"/>`,
};

async function readingOf(drawing: string): Promise<Reading> {
	const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${drawing}</svg>`;
	const result = await readPhoto(await sharp(Buffer.from(svg)).png().toBuffer());
	if (!result.ok) throw new Error(result.message);
	return result.reading;
}

describe('a picture of what is no outfit', () => {
	it.each(Object.entries(DRAWINGS))('%s is a scene with its colours, of which no piece is told', async (_, drawing) => {
		const { photoKind, pieces, kindGuesses, swatches } = await readingOf(drawing);
		expect({ photoKind, pieces, kindGuesses }).toEqual({ photoKind: 'scene', pieces: undefined, kindGuesses: [] });
		expect(swatches.length).toBeGreaterThan(0);
	});
});
