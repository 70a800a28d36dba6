import { hexFromLab, srgbFromLab } from '../../colour/lab65.ts';
import { say } from '../../language/speak.ts';
import type { Palette } from '../../wardrobe/words/palette-colour.ts';
import { tokenName } from './token-name.ts';

const clamped = (value: number): number => Math.min(1, Math.max(0, Math.round(value * 10_000) / 10_000));

/**
 * The palette in the format of the W3C Design Tokens Community Group (Color module, 2025.10): `$type` "color", `$value` with colour space,
 * components and hex fallback. The exact CIELAB goes along as an extension.
 */
export function paletteTokens(palette: Palette, title: string): string {
	const tokens = Object.fromEntries(
		palette.colours.map((colour) => [
			tokenName(colour),
			{
				$type: 'color',
				$value: { colorSpace: 'srgb', components: srgbFromLab(colour.lab).map(clamped), hex: hexFromLab(colour.lab) },
				$description: `${colour.label || colour.name}, ${colour.role}`,
				$extensions: { dyelot: { lab65: colour.lab, weight: colour.weight, firmness: colour.firmness } },
			},
		]),
	);
	return `${JSON.stringify({ $description: `${title}. ${say('colours.screen')}`, palette: tokens }, null, '\t')}\n`;
}
