import { differenceCiede2000, parse } from 'culori';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { paletteCss } from '../../../src/store/export/palette-css.ts';
import { paletteSvg } from '../../../src/store/export/palette-svg.ts';
import { paletteTokens } from '../../../src/store/export/palette-tokens.ts';
import type { Palette } from '../../../src/wardrobe/words/palette-colour.ts';
import { aPaletteColour, INK, OAT, RUST } from '../../support/build-wardrobe.ts';

const hostile = '</style><script>alert(1)</script> */ } body{} "\u0007 مرحبا 🧥';
const palette: Palette = {
	colours: [
		aPaletteColour('c1', OAT, { label: 'oat', role: 'base' }),
		aPaletteColour('c2', INK, { label: hostile, role: 'base' }),
		aPaletteColour('c3', RUST, { label: '', role: 'accent' }),
	],
};
const lab65 = (lab: readonly [number, number, number]) => ({ mode: 'lab65', l: lab[0], a: lab[1], b: lab[2] }) as const;
/** How far eight bits a channel may lie from the colour itself: measured with culori, at most 1.07 over 600,000 random colours, near black. */
const EIGHT_BITS = 1.1;

describe('the palette as CSS', () => {
	const css = paletteCss(palette, hostile);

	it('has one custom property a colour, the colour itself as culori reads it', () => {
		const values = [...css.matchAll(/^\t--[a-z0-9-]+: (#[0-9a-f]{6});/gim)].map(([, hex]) => parse(hex!)!);
		expect(values).toHaveLength(3);
		for (const [index, { lab }] of palette.colours.entries())
			expect(differenceCiede2000()(values[index]!, lab65(lab))).toBeLessThan(EIGHT_BITS);
	});

	it('cannot be broken out of by a name', () => {
		expect(css.match(/\*\//g)).toHaveLength(4);
		expect(css).not.toMatch(/^\t--.*[<>]/m);
	});
});

describe('the palette as design tokens', () => {
	const tokens = JSON.parse(paletteTokens(palette, hostile)) as { palette: Record<string, Record<string, unknown>> };

	it('has the form of the W3C Design Tokens Community Group, Color module 2025.10', () => {
		// https://www.designtokens.org/tr/2025.10/color/: colorSpace, components 0..1 for srgb, hex of six digits as a fallback
		expect(Object.keys(tokens.palette)).toHaveLength(3);
		for (const [name, token] of Object.entries(tokens.palette)) {
			// https://www.designtokens.org/tr/2025.10/format/: a name starts with no "$" and holds none of { } .
			expect(name).toMatch(/^[^${}.][^{}.]*$/);
			expect(token.$type).toBe('color');
			const value = token.$value as { colorSpace: string; components: number[]; hex: string };
			expect(value.colorSpace).toBe('srgb');
			expect(value.hex).toMatch(/^#[0-9a-f]{6}$/);
			expect(value.components).toHaveLength(3);
			for (const component of value.components) {
				expect(component).toBeGreaterThanOrEqual(0);
				expect(component).toBeLessThanOrEqual(1);
			}
		}
	});

	it('keeps the exact colour beside the rounded one', () => {
		const [first] = Object.values(tokens.palette);
		expect(first!.$extensions).toMatchObject({ dyelot: { lab65: OAT } });
	});
});

describe('the palette as SVG', () => {
	it('draws each colour, on mid-grey, as a renderer of its own shows it', async () => {
		const { data, info } = await sharp(Buffer.from(paletteSvg(palette, 'Wet spring')))
			.removeAlpha()
			.raw()
			.toBuffer({ resolveWithObject: true });
		const at = (x: number, y: number) => {
			const [r, g, b] = data.subarray((y * info.width + x) * 3);
			return { mode: 'rgb', r: r! / 255, g: g! / 255, b: b! / 255 } as const;
		};
		for (const [index, { lab }] of palette.colours.entries())
			expect(differenceCiede2000()(at(80, 64 + index * 72 + 30), lab65(lab))).toBeLessThan(EIGHT_BITS);
		expect(differenceCiede2000()(at(5, 5), lab65([50, 0, 0]))).toBeLessThan(1);
	});

	it('holds hostile names as text only', async () => {
		const svg = paletteSvg(palette, hostile);
		expect(svg).not.toContain('<script');
		// A renderer refuses SVG that is not well-formed.
		expect((await sharp(Buffer.from(svg)).metadata()).format).toBe('svg');
	});

	it('of no colours at all is still a card', async () => {
		expect((await sharp(Buffer.from(paletteSvg({ colours: [] }, ''))).metadata()).width).toBe(640);
	});

	it('says that a screen is not the cloth', () => {
		for (const text of [paletteSvg(palette, ''), paletteCss(palette, ''), paletteTokens(palette, '')])
			expect(text).toContain('not the cloth');
	});
});
