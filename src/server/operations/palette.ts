import { Type } from 'typebox';
import { paletteAnswer } from '../schemas/answers.ts';
import { byId, exact, oneOf, seen, told } from '../schemas/basics.ts';
import { paletteEditSchema } from '../schemas/palette.ts';
import { fileOf } from './answers.ts';
import { LOOKING_AT_ONE, REFUSED } from './refusals.ts';
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
	getPaletteCss: {
		method: 'GET',
		url: '/api/seasons/:id/palette.css',
		schema: {
			operationId: 'getPaletteCss',
			tags,
			summary: 'The palette as CSS custom properties',
			params: byId,
			response: { 200: fileOf('text/css', 'A style sheet.'), ...LOOKING_AT_ONE },
		},
	},
	getPaletteTokens: {
		method: 'GET',
		url: '/api/seasons/:id/palette.tokens.json',
		schema: {
			operationId: 'getPaletteTokens',
			tags,
			summary: 'The palette as design tokens',
			params: byId,
			response: { 200: told(Type.Object({}), 'Design tokens (W3C community group).'), ...LOOKING_AT_ONE },
		},
	},
	getPaletteSvg: {
		method: 'GET',
		url: '/api/seasons/:id/palette.svg',
		schema: {
			operationId: 'getPaletteSvg',
			tags,
			summary: 'The palette as a card (SVG)',
			params: byId,
			response: { 200: fileOf('image/svg+xml', 'A picture.'), ...LOOKING_AT_ONE },
		},
	},
	getPalettePng: {
		method: 'GET',
		url: '/api/seasons/:id/palette.png',
		schema: {
			operationId: 'getPalettePng',
			tags,
			summary: 'The palette as a card (PNG)',
			params: byId,
			response: { 200: fileOf('image/png', 'A picture.'), ...LOOKING_AT_ONE },
		},
	},
} as const;
