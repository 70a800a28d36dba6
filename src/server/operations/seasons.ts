import { Type } from 'typebox';
import { YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import { partner, report, season } from '../schemas/answers.ts';
import { byId, exact, isoDate, name, oneOf } from '../schemas/basics.ts';
import { sortedGarments, versionsById } from '../schemas/garment.ts';
import { seasonChanges } from '../schemas/season.ts';
import { countOf, fileOf, listOf } from './answers.ts';
import { LOOKING, LOOKING_AT_ONE, REFUSED } from './refusals.ts';
import { change, look, removal } from './usual.ts';

const dates = { name, startsOn: isoDate, endsOn: isoDate };
const tags = ['seasons'];

export const seasonOperations = {
	listSeasons: {
		method: 'GET',
		url: '/api/seasons',
		schema: {
			operationId: 'listSeasons',
			tags,
			summary: 'All seasons, archived ones too',
			response: { 200: listOf(season), ...LOOKING },
		},
	},
	getSeason: look('getSeason', '/api/seasons/:id', tags, 'One season', season),
	getReport: look('getReport', '/api/seasons/:id/report', tags, 'Every judgement of a season', report),
	listPartners: {
		method: 'GET',
		url: '/api/seasons/:id/partners',
		schema: {
			operationId: 'listPartners',
			tags,
			summary: 'Everything that goes with one garment in a season, best first',
			params: byId,
			querystring: Type.Object({ garmentId: Type.String({ maxLength: 100 }) }),
			response: { 200: listOf(partner), ...LOOKING_AT_ONE },
		},
	},
	startSeason: {
		method: 'POST',
		url: '/api/seasons',
		schema: {
			operationId: 'startSeason',
			tags,
			summary: 'Start a season',
			body: exact({ ...dates, yearPart: Type.Optional(oneOf(YEAR_PARTS)) }),
			response: { 201: season, ...REFUSED },
		},
	},
	changeSeason: change('changeSeason', '/api/seasons/:id', tags, 'Change parts of a season', {
		body: seasonChanges,
		changed: season,
	}),
	removeSeason: removal('removeSeason', '/api/seasons/:id', tags, 'Put a season in the bin'),
	copySeason: {
		method: 'POST',
		url: '/api/seasons/:id/copy',
		schema: {
			operationId: 'copySeason',
			tags,
			summary: 'Start a season from another, with its board and palette',
			params: byId,
			body: exact(dates),
			response: { 201: season, ...REFUSED },
		},
	},
	sortGarments: {
		method: 'POST',
		url: '/api/seasons/:id/sorted',
		schema: {
			operationId: 'sortGarments',
			tags,
			summary: 'Give garments their places in the season’s round of sorting',
			params: byId,
			body: exact({ garments: sortedGarments, versions: Type.Optional(versionsById) }),
			response: { 200: exact({ versions: versionsById }), ...REFUSED },
		},
	},
	sortAgain: {
		method: 'DELETE',
		url: '/api/seasons/:id/sorted',
		schema: {
			operationId: 'sortAgain',
			tags,
			summary: 'Begin the season’s round of sorting anew',
			params: byId,
			response: { 200: countOf('changed', 'So many are asked about again.'), ...REFUSED },
		},
	},
	getPocketPage: look(
		'getPocketPage',
		'/api/seasons/:id/pocket',
		tags,
		'The pocket page for the shop, one file',
		fileOf('text/html', 'A page that needs no network.'),
	),
} as const;
