import { Type } from 'typebox';
import { YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import { partner, report, season } from '../schemas/answers.ts';
import { exact, isoDate, name, oneOf } from '../schemas/basics.ts';
import { sortedGarments, versionsById } from '../schemas/garment.ts';
import { seasonChanges } from '../schemas/season.ts';
import { countOf, fileOf, listOf } from './answers.ts';
import { add, get, named, patch, post, remove, removeEntry } from './operation.ts';

const dates = { name, startsOn: isoDate, endsOn: isoDate };

export const seasonOperations = named('seasons', {
	listSeasons: get('/api/seasons', 'All seasons, archived ones too', listOf(season)),
	getSeason: get('/api/seasons/:id', 'One season', season),
	getReport: get('/api/seasons/:id/report', 'Every judgement of a season', report),
	listPartners: get(
		'/api/seasons/:id/partners',
		'Everything that goes with one garment in a season, best first',
		listOf(partner),
		{ querystring: Type.Object({ garmentId: Type.String({ maxLength: 100 }) }) },
	),
	startSeason: add('/api/seasons', 'Start a season', season, {
		body: exact({ ...dates, yearPart: Type.Optional(oneOf(YEAR_PARTS)) }),
	}),
	changeSeason: patch('/api/seasons/:id', 'Change parts of a season', season, { body: seasonChanges }),
	removeSeason: removeEntry('/api/seasons/:id', 'Put a season in the bin'),
	copySeason: add('/api/seasons/:id/copy', 'Start a season from another, with its board and palette', season, {
		body: exact(dates),
	}),
	sortGarments: post(
		'/api/seasons/:id/sorted',
		'Give garments their places in the season’s round of sorting',
		exact({ versions: versionsById }),
		{ body: exact({ garments: sortedGarments, versions: Type.Optional(versionsById) }) },
	),
	sortAgain: remove(
		'/api/seasons/:id/sorted',
		'Begin the season’s round of sorting anew',
		countOf('changed', 'So many are asked about again.'),
	),
	getPocketPage: get(
		'/api/seasons/:id/pocket',
		'The pocket page for the shop, one file',
		fileOf('text/html', 'A page that needs no network.'),
	),
});
