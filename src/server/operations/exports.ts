import { fileOf } from './answers.ts';
import { get, named } from './operation.ts';

const table = <const Url extends string>(url: Url, what: string) =>
	get(url, `All ${what} as a table`, fileOf('text/csv', 'CSV (RFC 4180) in UTF-8 with a heading.'));

export const exportOperations = named('exports', {
	exportGarments: table('/api/garments.csv', 'garments'),
	exportWears: table('/api/export/wears.csv', 'wears'),
	exportSeasons: table('/api/export/seasons.csv', 'seasons'),
	exportInspirations: table('/api/export/inspirations.csv', 'inspirations'),
	exportWishes: table('/api/export/wishes.csv', 'wishes'),
	exportCandidates: table('/api/export/candidates.csv', 'candidates'),
	exportMakers: table('/api/export/makers.csv', 'makers'),
	exportPhotos: table('/api/export/photos.csv', 'photos'),
	exportPairWords: table('/api/export/pair-words.csv', 'words on pairs'),
});
