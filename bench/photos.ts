import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { READER_ENVIRONMENT, READER_FLAGS } from '../src/photo/readers/reader-settings.ts';
import type { CaseAnswer, CaseName, PeerName } from './photo-case.ts';
import { phoneSized, SIZES, type SizeName, type Weight } from './sample-photos.ts';
import type { Row, Table } from './table.ts';

const FORMATS = ['jpeg', 'png', 'webp', 'heic'] as const;
type Format = (typeof FORMATS)[number];
const weightOf = (format: Format): Weight => (format === 'png' ? 'light' : 'phone');
const PEERS = ['node-vibrant', 'colorthief', 'extract-colors'] as const satisfies readonly PeerName[];
/** Measured rounds of a few of each step; the largest photos take seconds each. */
const roundsOf = (size: SizeName): number => (size === '48 MP' ? 1 : 5);

const caseProgram = fileURLToPath(new URL('./photo-case.ts', import.meta.url));

/** Runs one case in a process of its own; null where it failed, with the last line it said. */
function measured(name: CaseName, path: string, rounds: number): CaseAnswer | { readonly failed: string } {
	const done = spawnSync(
		process.execPath,
		[...READER_FLAGS, '--import', 'tsx', caseProgram, name, path, String(rounds)],
		{
			encoding: 'utf8',
			env: { ...process.env, ...READER_ENVIRONMENT },
			timeout: 300_000,
		},
	);
	if (done.status === 0) return JSON.parse(done.stdout) as CaseAnswer;
	const said =
		done.stderr.split('\n').find((line) => /Error:/.test(line)) ?? `ended with ${done.status ?? done.signal}`;
	return { failed: said.replace(/^.*?Error: /, '').slice(0, 60) };
}

/** A photo of the size and format as a file, or why there is none. */
async function photoFile(
	folder: string,
	size: SizeName,
	format: Format,
	weight: Weight,
): Promise<string | { why: string }> {
	const path = join(folder, `${size.replace(' ', '')}.${format}`);
	if (format !== 'heic') {
		writeFileSync(path, await phoneSized(size, format, weight));
		return path;
	}
	const source = join(folder, 'source.png');
	writeFileSync(source, await phoneSized(size, 'png', weight));
	const made = spawnSync('heif-enc', ['-q', '60', '-p', 'preset=ultrafast', '-o', path, source], { encoding: 'utf8' });
	if (made.error) return { why: 'no heif-enc on this machine' };
	return made.status === 0 ? path : { why: made.stderr.split('\n')[0]!.slice(0, 60) };
}

type Measured = { readonly stages: Row; readonly peers: Row; readonly share?: number };

function measuredPhoto(label: string, path: string, rounds: number, idleMb: number): Measured {
	const steps = measured('steps', path, rounds);
	const peak = measured('whole', path, rounds);
	if ('failed' in steps || 'failed' in peak) {
		const why = 'failed' in steps ? steps.failed : 'failed' in peak ? peak.failed : '';
		return { stages: [label, why], peers: [label, why] };
	}
	const { floor, decode = 0, parser = 0, derived = 0, reading = 0, whole = 0 } = steps.cpuMs;
	// sharp itself cannot open a phone's HEIC: there is no floor to compare with.
	const share = (total: number) => (floor === undefined ? 'no floor' : total / (2 * floor + parser));
	const peers = PEERS.map((peer) => {
		const theirs = steps.cpuMs[peer];
		return theirs === undefined ? 'cannot read it' : theirs / whole;
	});
	return {
		stages: [
			label,
			statSync(path).size / 1e6,
			floor ?? 'none',
			decode,
			parser,
			Math.max(0, reading - decode - parser),
			reading,
			derived,
			whole,
			share(reading),
			share(whole),
			peak.peakMb - idleMb,
		],
		peers: [label, ...peers],
		...(floor === undefined ? {} : { share: share(reading) as number }),
	};
}

/** Reading one photo, stage by stage, in every format and size, and the same photos through libraries that only take colours. */
export async function run(): Promise<readonly Table[]> {
	const folder = mkdtempSync(join(tmpdir(), 'dyelot-bench-'));
	const stages: Row[] = [];
	const peers: Row[] = [];
	const ratios: Record<string, number> = {};
	try {
		const small = await photoFile(folder, '2 MP', 'jpeg', 'phone');
		const idle = typeof small === 'string' ? measured('idle', small, 1) : { failed: small.why };
		if ('failed' in idle) throw new Error(`the bench's own process cannot start: ${idle.failed}`);
		const photos = (Object.keys(SIZES) as SizeName[]).flatMap((size) =>
			FORMATS.map((format) => ({ size, format, weight: weightOf(format) })),
		);
		for (const { size, format, weight } of [...photos, { size: '12 MP', format: 'jpeg', weight: 'light' } as const]) {
			const label = `${size} ${format.toUpperCase()}${weight === 'light' ? ', light' : ''}`;
			const path = await photoFile(folder, size, format, weight);
			const row: Measured =
				typeof path === 'string'
					? measuredPhoto(label, path, roundsOf(size), idle.peakMb)
					: { stages: [label, path.why], peers: [label, path.why] };
			console.error(`photos: ${label} measured`);
			stages.push(row.stages);
			peers.push(row.peers);
			if (row.share !== undefined) ratios[`reading ${label} / (2 floor + parser)`] = row.share;
		}
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
	return [
		{
			title: 'Reading a photo (CPU ms on one thread, warm)',
			columns: [
				'',
				'file MB',
				'floor',
				'decode',
				'parser',
				'light, swatches, pattern',
				'reading',
				'pictures kept',
				'whole',
				'reading / (2 floor + parser)',
				'whole / (2 floor + parser)',
				'peak MB above idle',
			],
			rows: stages,
			ratios,
			notes: [
				"Floor: sharp's decode and shrink to the display size, alone. Light, swatches, pattern: the reading less decode and parser. Whole: with the pictures kept.",
			],
		},
		{
			title: 'The same photos through libraries that only take colours (their CPU time / our whole reading)',
			columns: ['', ...PEERS],
			rows: peers,
			notes: ['extract-colors is given all pixels by sharp, as it decodes nothing itself outside a browser.'],
		},
	];
}
