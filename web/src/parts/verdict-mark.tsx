import type { Verdict } from '../../../src/wardrobe/fit.ts';

/** Two threads: crossing one over the other, nearly meeting, parting, or not to be seen. */
const GLYPHS: Readonly<Record<Verdict, readonly string[]>> = {
	fits: ['M3 8H13', 'M8 3V6M8 10V13'],
	near: ['M2 8H6.5M9.5 8H14', 'M8 3V6M8 10V13'],
	off: ['M3 3V13', 'M13 3V13'],
	unsure: ['M3 8H4.5M7.25 8H8.75M11.5 8H13', 'M8 3V4.5M8 11.5V13'],
};

const WORDS: Readonly<Record<Verdict, string>> = { fits: 'fits', near: 'near', off: 'off', unsure: 'unsure' };

/** The verdict as a word with its sign, and how far the number can be believed. */
export function VerdictMark({
	verdict,
	percent,
	low,
	high,
	likely,
}: {
	verdict: Verdict;
	percent?: number;
	low?: number;
	high?: number;
	likely?: string;
}) {
	return (
		<span className={`verdict verdict-${verdict}`}>
			<svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
				{GLYPHS[verdict].map((path) => (
					<path key={path} d={path} fill="none" stroke="currentColor" strokeWidth="2" />
				))}
			</svg>
			<span>
				{WORDS[verdict]}
				{verdict === 'unsure' && likely ? `, likely ${likely}` : ''}
			</span>
			{percent === undefined ? null : (
				<span className="number quiet">
					{Math.round(percent)}
					{low !== undefined && high !== undefined && Math.round(high) > Math.round(low) ? (
						<span className="small">
							{' '}
							({Math.round(low)}–{Math.round(high)})
						</span>
					) : null}
				</span>
			)}
		</span>
	);
}
