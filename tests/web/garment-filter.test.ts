import { describe, expect, it } from 'vitest';
import { fitOf } from '../../src/wardrobe/fit/fit.ts';
import type { GarmentReport } from '../../src/wardrobe/season/garment-report.ts';
import type { Palette } from '../../src/wardrobe/words/palette-colour.ts';
import { filteredGarments, type GarmentRow, NO_FILTER } from '../../web/src/pages/garments/garment-filter.ts';
import { sortGroups, sortOrder } from '../../web/src/pages/sort/sort-order.ts';
import { aGarment } from '../support/build-wardrobe.ts';

const palette: Palette = { colours: [] };

function row(changes: Parameters<typeof aGarment>[0], percent = 50): GarmentRow {
	const garment = aGarment(changes);
	const said = {
		fit: { ...fitOf(garment, palette), percent, verdict: 'near' },
		partnerCount: percent,
		twins: [],
		loner: null,
	};
	return { garment, said: said as unknown as GarmentReport };
}

const rows = [
	row({ id: 'a', name: 'Moss jumper', kind: 'jumper', lab: [35, -10, 20] }, 80),
	row({ id: 'b', name: 'Ink trousers', kind: 'trousers', lab: [20, 2, -12], place: 'stored' }, 90),
	row({ id: 'c', name: 'Old coat', kind: 'coat', place: 'gone' }, 10),
	row({ id: 'd', name: 'Ink raincoat', kind: 'raincoat', kindFrom: 'photo', notes: 'leaks at the seam' }, 80),
];
const ids = (found: readonly GarmentRow[]) => found.map(({ garment }) => garment.id);

describe('finding garments', () => {
	it('what is gone is not shown unless asked for; best fit comes first, equal ones keep their order', () => {
		expect(ids(filteredGarments(rows, { ...NO_FILTER, order: 'fit' }))).toEqual(['b', 'a', 'd']);
		expect(ids(filteredGarments(rows, { ...NO_FILTER, place: 'gone' }))).toEqual(['c']);
	});

	it('the newest comes first, and the list is the same before the season has judged it', () => {
		const added = rows.map(({ garment, said }, day) => ({
			garment: { ...garment, addedAt: `2026-01-0${day + 1}T00:00:00Z` },
			said,
		}));
		const unjudged = added.map(({ garment }) => ({ garment, said: null }));
		expect(ids(filteredGarments(added, NO_FILTER))).toEqual(['d', 'b', 'a']);
		expect(ids(filteredGarments(unjudged, NO_FILTER))).toEqual(['d', 'b', 'a']);
	});

	it('every word typed must be found, in name, kind, colour or notes', () => {
		expect(ids(filteredGarments(rows, { ...NO_FILTER, text: 'ink' }))).toEqual(['b', 'd']);
		expect(ids(filteredGarments(rows, { ...NO_FILTER, text: 'INK seam' }))).toEqual(['d']);
		expect(ids(filteredGarments(rows, { ...NO_FILTER, text: 'green' }))).toEqual(['a']);
		expect(ids(filteredGarments(rows, { ...NO_FILTER, text: 'navy trou' }))).toEqual(['b']);
		expect(ids(filteredGarments(rows, { ...NO_FILTER, text: 'nothing' }))).toEqual([]);
	});

	it('slot, place and the kinds still to be confirmed narrow it down', () => {
		expect(ids(filteredGarments(rows, { ...NO_FILTER, slot: 'outer' }))).toEqual(['d']);
		expect(ids(filteredGarments(rows, { ...NO_FILTER, place: 'stored' }))).toEqual(['b']);
		expect(ids(filteredGarments(rows, { ...NO_FILTER, flag: 'kind' }))).toEqual(['d']);
		expect(ids(filteredGarments(rows, { ...NO_FILTER, order: 'name' }))).toEqual(['d', 'b', 'a']);
	});
});

describe('the order of sorting', () => {
	const item = (id: string, slot: string, suggestion: string, basic = false) => ({
		garment: aGarment({ id, basic }),
		said: { slot, sorting: { suggestion }, fit: { percent: 50 } } as unknown as GarmentReport,
	});

	it('goes slot by slot, clear cases first, and does not ask about basics', () => {
		const items = [
			item('w', 'shoes', 'keep'),
			item('x', 'top', 'undecided'),
			item('y', 'top', 'keep'),
			item('z', 'top', 'keep', true),
		];
		expect(sortOrder(items).map(({ garment }) => garment.id)).toEqual(['y', 'x', 'w']);
	});

	it('groups what is suggested alike, and leaves out what nothing is suggested for', () => {
		const items = [item('a', 'top', 'undecided'), item('b', 'shoes', 'keep'), item('c', 'top', 'keep')];
		const groups = sortGroups(items).map((group) => [group.lean, group.items.map(({ garment }) => garment.id)]);
		expect(groups).toEqual([
			['keep', ['b', 'c']],
			['undecided', ['a']],
		]);
		const leaning = (fit: object) => {
			const one = item('a', 'top', 'undecided');
			return sortGroups([{ ...one, said: { ...one.said, fit } as unknown as GarmentReport }])[0]?.lean;
		};
		expect(leaning({ percent: 50, verdict: 'unsure', likely: 'fits' })).toBe('rather-keep');
		expect(leaning({ percent: 50, verdict: 'off' })).toBe('rather-not');
		expect(leaning({ percent: 50, verdict: 'near' })).toBe('undecided');
	});
});
