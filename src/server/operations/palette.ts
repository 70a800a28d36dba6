import { Type } from 'typebox';
import { paletteAnswer } from '../schemas/answers.ts';
import { byId, exact, oneOf, seen, told } from '../schemas/basics.ts';
import { paletteEditSchema } from '../schemas/palette.ts';
import { fileOf } from './answers.ts';
import { REFUSED } from './refusals.ts';
import { look } from './usual.ts';

const tags = ['palette'];

export const paletteOperations = {
	getPalette: look(
		'getPalette',
		'/api/seasons/:id/palette',
		tags,
		"A season's palette, beside last year's",
		paletteAnswer,
	),
	derivePalette: {
		method: 'POST',
		url: '/api/seasons/:id/palette/derive',
		schema: {
			operationId: 'derivePalette',
			tags,
			summary: 'Derive the palette from the board or from the garments on the rail',
			params: byId,
			querystring: seen,
			body: exact({ from: oneOf(['inspirations', 'garments'] as const) }),
			response: { 200: paletteAnswer, ...REFUSED },
		},
	},
	editPalette: {
		method: 'POST',
		url: '/api/seasons/:id/palette/edit',
		schema: {
			operationId: 'editPalette',
			tags,
			summary: 'Lock, merge, split, name, remove or add a colour',
			params: byId,
			querystring: seen,
			body: paletteEditSchema,
			response: { 200: paletteAnswer, ...REFUSED },
		},
	},
	getPaletteCss: look(
		'getPaletteCss',
		'/api/seasons/:id/palette.css',
		tags,
		'The palette as CSS custom properties',
		fileOf('text/css', 'A style sheet.'),
	),
	getPaletteTokens: look(
		'getPaletteTokens',
		'/api/seasons/:id/palette.tokens.json',
		tags,
		'The palette as design tokens',
		told(Type.Object({}), 'Design tokens (W3C community group).'),
	),
	getPaletteSvg: look(
		'getPaletteSvg',
		'/api/seasons/:id/palette.svg',
		tags,
		'The palette as a card (SVG)',
		fileOf('image/svg+xml', 'A picture.'),
	),
	getPalettePng: look(
		'getPalettePng',
		'/api/seasons/:id/palette.png',
		tags,
		'The palette as a card (PNG)',
		fileOf('image/png', 'A picture.'),
	),
} as const;
