import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { TARGETS } from '../../scripts/pack/targets.mjs';

type Target = (typeof TARGETS)[number];

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };

/** The folder that a download was packed from. */
export const stagedFolder = ({ name }: Target): string =>
	join(process.cwd(), 'node_modules/.cache/dyelot-pack', `dyelot-${version}-${name}`);

/** The systems for which `npm run pack-all` has made a download here. */
export const targetsMade = (): Target[] => TARGETS.filter((target) => existsSync(stagedFolder(target)));
