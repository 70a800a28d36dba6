import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { openHome } from '../../src/store/open-home.ts';
import { cutOut, withSheetAndCard } from '../support/pictures.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const dyelot = (...words: string[]) => spawnSync(process.execPath, ['bin/dyelot.mjs', ...words], { encoding: 'utf8' });
const linesOf = (text: string) =>
	text
		.trim()
		.split('\n')
		.map((line) => JSON.parse(line) as Record<string, unknown>);

let pictures: { rust: Buffer; oat: Buffer; sheetAndCard: Buffer };
beforeAll(async () => {
	pictures = {
		rust: await cutOut([45, 38, 40]),
		oat: await cutOut([80, 3, 14]),
		sheetAndCard: await withSheetAndCard(),
	};
});

function folderWithPhotos(): { rust: string; oat: string; sheetAndCard: string; text: string; folder: string } {
	const folder = temporaryFolder();
	const paths = {
		rust: join(folder, 'rust.png'),
		oat: join(folder, 'oat.png'),
		sheetAndCard: join(folder, 'sheet-and-card.png'),
		text: join(folder, 'list.jpg'),
		folder,
	};
	writeFileSync(paths.rust, pictures.rust);
	writeFileSync(paths.oat, pictures.oat);
	writeFileSync(paths.sheetAndCard, pictures.sheetAndCard);
	writeFileSync(paths.text, 'milk, eggs, and a photo of neither');
	return paths;
}

describe('dyelot read', () => {
	it('prints one line of JSON a photo, in the order given, and ends with 1 where one failed', () => {
		const { rust, oat, text } = folderWithPhotos();
		const done = dyelot('read', rust, text, oat, '--json');
		expect(done.status).toBe(1);
		const lines = linesOf(done.stdout);
		expect(lines.map(({ photo, ok }) => [photo, ok])).toEqual([
			[rust, true],
			[text, false],
			[oat, true],
		]);
		expect(Object.keys(lines[0]!).sort()).toEqual([
			'light',
			'ms',
			'ok',
			'photo',
			'pieces',
			'scene',
			'swatches',
			'trust',
		]);
		expect(lines[0]!.light).toMatchObject({ source: 'none', strength: 0, reason: expect.stringContaining('light') });
		expect(Object.keys(lines[1]!).sort()).toEqual(['message', 'ok', 'photo', 'reason']);
		const swatches = lines[0]!.swatches as { lab: number[]; share: number; slot: string | null; name: string }[];
		expect(Object.keys(swatches[0]!).sort()).toEqual(['lab', 'name', 'share', 'slot']);
		expect(swatches.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
	});

	it('takes a white and a grey together, and says which way the light is known', () => {
		const { sheetAndCard } = folderWithPhotos();
		const words = [
			'read',
			sheetAndCard,
			'--neutral',
			'60,60,white',
			'--neutral',
			'60,340,grey',
			'--at',
			'300,200',
			'--json',
		];
		const [line] = linesOf(dyelot(...words).stdout);
		expect(line!.light).toMatchObject({ source: 'neutral-pointed', strength: 1 });
		expect((line!.light as { reason: string }).reason).toContain('the white and the grey');
		expect(dyelot('read', sheetAndCard, '--neutral', '1,1', '--neutral', '2,2', '--neutral', '3,3').status).toBe(2);
	});

	it('adds shades and points when asked', () => {
		const { rust } = folderWithPhotos();
		const [line] = linesOf(
			dyelot('read', rust, '--shades', '3', '--at', '200,200', '--at', '10,10', '--neutral', '200,200,50', '--json')
				.stdout,
		);
		const at = line!.at as { x: number; y: number; lab: number[]; uncorrected: number[] }[];
		expect(at.map(({ x, y }) => [x, y])).toEqual([
			[200, 200],
			[10, 10],
		]);
		expect(Object.keys(at[0]!).sort()).toEqual(['lab', 'uncorrected', 'x', 'y']);
		expect((line!.shades as { share: number }[]).reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
	});
});

describe('dyelot palette and check', () => {
	it('hand the palette on in the documented form', () => {
		const { rust, oat, folder } = folderWithPhotos();
		const made = dyelot('palette', rust, oat, '--json');
		expect(made.status).toBe(0);
		const { colours } = JSON.parse(made.stdout) as { colours: Record<string, unknown>[] };
		for (const key of ['lab', 'weight', 'role', 'name', 'photos', 'firmness']) expect(colours[0]).toHaveProperty(key);
		const file = join(folder, 'palette.json');
		writeFileSync(file, made.stdout);
		const [check] = linesOf(dyelot('check', rust, '--palette', file, '--kind', 'jumper', '--json').stdout);
		expect(check).toMatchObject({ ok: true, kind: 'jumper' });
		expect((check!.fit as { percent: number }).percent).toBeGreaterThan(90);
	});

	it('say what is wrong with a palette file', () => {
		const { rust, text } = folderWithPhotos();
		const done = dyelot('check', rust, '--palette', text);
		expect(done.status).toBe(1);
		expect(done.stderr).toContain('Expected JSON');
	});
});

describe('dyelot backup and restore', () => {
	it('carry a home over, and refuse a folder that is not empty', async () => {
		const { folder } = folderWithPhotos();
		const [home, archive, copy] = [join(folder, 'home'), join(folder, 'home.tar'), join(folder, 'copy')];
		await (await openHome(home, { now: () => new Date() })).close();
		expect(dyelot('backup', archive, '--home', home).status).toBe(0);
		const restored = dyelot('restore', archive, '--home', copy, '--json');
		expect(JSON.parse(restored.stdout)).toEqual({ home: copy, archive, files: 1, findings: [] });
		const again = dyelot('restore', archive, '--home', copy);
		expect(again.status).toBe(1);
		expect(again.stderr).toContain('Expected an empty folder');
	});
});
