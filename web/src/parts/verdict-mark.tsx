import { say } from '../../../src/language/speak.ts';
import type { SwatchFit, Verdict } from '../../../src/wardrobe/fit/fit-result.ts';

/** Four threads woven, two that cross, two that never meet, and a weave that cannot be seen for sure. */
const GLYPHS: Readonly<Record<Verdict, readonly string[]>> = {
	fits: ['M5 1V15', 'M11 1V15', 'M1 5H15', 'M1 11H15'],
	near: ['M11 1V15', 'M1 5H15'],
	off: ['M4 1V15', 'M12 1V15'],
	unsure: ['M5 1V15', 'M11 1V15', 'M1 5H15', 'M1 11H15'],
};

/** What an unsure verdict most likely is. */
type Likely = Exclude<Verdict, 'unsure'>;
const LIKELY = { fits: 'verdicts.likelyFits', near: 'verdicts.likelyNear', off: 'verdicts.likelyOff' } as const;

/** The verdict as a word with its sign, and how far the number can be believed, unless in brief. */
export function VerdictMark({
	verdict,
	percent,
	low,
	high,
	likely,
	swatches = [],
	brief = false,
}: {
	verdict: Verdict;
	/** The word alone, for lists; the figures stand where one piece is looked at. */
	brief?: boolean;
	percent?: number;
	low?: number;
	high?: number;
	likely?: Likely;
	swatches?: readonly SwatchFit[];
}) {
	// A season without a palette gives no verdict, and a nought would read like one.
	if (swatches.length > 0 && swatches.every(({ paletteColourId }) => paletteColourId === null))
		return <span className="small quiet">{say('verdicts.noPalette')}</span>;
	return (
		<span className={`verdict verdict-${verdict}`}>
			<svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
				{GLYPHS[verdict].map((path) => (
					<path
						key={path}
						d={path}
						fill="none"
						stroke="currentColor"
						strokeWidth="1.75"
						strokeDasharray={verdict === 'unsure' ? '2 2' : undefined}
					/>
				))}
			</svg>
			<span>{say(verdict === 'unsure' && likely ? LIKELY[likely] : `verdicts.${verdict}`)}</span>
			{percent === undefined || brief ? null : (
				<span className="number small quiet">
					{low !== undefined && high !== undefined && Math.round(high) > Math.round(low)
						? say('verdicts.between', { low: Math.round(low), high: Math.round(high) })
						: say('verdicts.points', { percent: Math.round(percent) })}
				</span>
			)}
		</span>
	);
}
