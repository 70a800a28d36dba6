import { Type } from 'typebox';
import { paletteAnswer } from '../schemas/answers.ts';
import { exact, oneOf, seen, told } from '../schemas/basics.ts';
import { paletteEditSchema } from '../schemas/palette.ts';
import { fileOf } from './answers.ts';
import { get, named, post } from './operation.ts';

export const paletteOperations = named('palette', {
	getPalette: get('/api/seasons/:id/palette', "A season's palette, beside last year's", paletteAnswer),
	derivePalette: post(
		'/api/seasons/:id/palette/derive',
		'Derive the palette from the board or from the garments on the rail',
		paletteAnswer,
		{ querystring: seen, body: exact({ from: oneOf(['inspirations', 'garments'] as const) }) },
	),
	editPalette: post(
		'/api/seasons/:id/palette/edit',
		'Lock, merge, split, name, remove or add a colour',
		paletteAnswer,
		{ querystring: seen, body: paletteEditSchema },
	),
	getPaletteCss: get(
		'/api/seasons/:id/palette.css',
		'The palette as CSS custom properties',
		fileOf('text/css', 'A style sheet.'),
	),
	getPaletteTokens: get(
		'/api/seasons/:id/palette.tokens.json',
		'The palette as design tokens',
		told(Type.Object({}), 'Design tokens (W3C community group).'),
	),
	getPaletteSvg: get(
		'/api/seasons/:id/palette.svg',
		'The palette as a card (SVG)',
		fileOf('image/svg+xml', 'A picture.'),
	),
	getPalettePng: get('/api/seasons/:id/palette.png', 'The palette as a card (PNG)', fileOf('image/png', 'A picture.')),
});
