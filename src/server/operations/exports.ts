import { fileOf } from './answers.ts';
import { LOOKING } from './refusals.ts';

const table = <Id extends string, Url extends string>(operationId: Id, url: Url, what: string) =>
	({
		method: 'GET',
		url,
		schema: {
			operationId,
			tags: ['exports'],
			summary: `All ${what} as a table`,
			response: { 200: fileOf('text/csv', 'CSV (RFC 4180) in UTF-8 with a heading.'), ...LOOKING },
		},
	}) as const;

export const exportOperations = {
	exportGarments: table('exportGarments', '/api/garments.csv', 'garments'),
	exportWears: table('exportWears', '/api/export/wears.csv', 'wears'),
	exportSeasons: table('exportSeasons', '/api/export/seasons.csv', 'seasons'),
	exportInspirations: table('exportInspirations', '/api/export/inspirations.csv', 'inspirations'),
	exportWishes: table('exportWishes', '/api/export/wishes.csv', 'wishes'),
	exportCandidates: table('exportCandidates', '/api/export/candidates.csv', 'candidates'),
	exportMakers: table('exportMakers', '/api/export/makers.csv', 'makers'),
	exportPhotos: table('exportPhotos', '/api/export/photos.csv', 'photos'),
	exportPairWords: table('exportPairWords', '/api/export/pair-words.csv', 'words on pairs'),
} as const;
