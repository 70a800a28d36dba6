import { listText } from '../../../../src/language/numbers.ts';
import { say } from '../../../../src/language/speak.ts';
import type { AxisProfile, StyleProfile } from '../../../../src/wardrobe/fit/style.ts';
import type { StyleAxis } from '../../../../src/wardrobe/fit/style-axes.ts';
import { slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import { KIND_FAMILIES, type KindFamily } from '../../../../src/wardrobe/words/kind-family.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import { percentText, seenFrom } from '../../parts/colour-text.ts';

/** Ends of each axis in words, and the range drawn: L* and C* as they are, warmth and pattern as their axes define them. */
const AXES = {
	lightness: { less: 'styleShown.deep', more: 'styleShown.light', from: 0, to: 100 },
	vividness: { less: 'styleShown.soft', more: 'styleShown.vivid', from: 0, to: 80 },
	warmth: { less: 'styleShown.cool', more: 'styleShown.warm', from: -1, to: 1 },
	pattern: { less: 'styleShown.plain', more: 'styleShown.patterned', from: 0, to: 1 },
} as const satisfies Record<StyleAxis, { less: string; more: string; from: number; to: number }>;

function Axis({ axis }: { axis: AxisProfile }) {
	const { less, more, from, to } = AXES[axis.axis];
	const at = (value: number) => Math.min(100, Math.max(0, (100 * (value - from)) / (to - from)));
	const { mean, low, high } = axis;
	return (
		<li className="axis">
			<span>{say(less)}</span>
			<span className="axis-line">
				{mean === null || low === null || high === null ? null : (
					<>
						<span
							className="axis-range"
							style={{ left: `${at(low)}%`, width: `${Math.max(1, at(high) - at(low))}%` }}
						/>
						<span className="axis-mean" style={{ left: `${at(mean)}%` }} />
					</>
				)}
			</span>
			<span>{say(more)}</span>
			<span className="hidden-visually">
				{mean === null
					? say('styleShown.noPicture')
					: say('styleShown.towards', {
							value: Math.round(at(mean)),
							end: say(more),
							pictures: say('counts.pictures', { count: axis.photos }),
						})}
			</span>
		</li>
	);
}

/** From how far apart, CIEDE2000, the parts of an outfit are said to stand clearly apart, or a little; judged by looking at outfits, no source. */
const CLEARLY_APART = 30;
const A_LITTLE_APART = 15;

/** How far the parts of an outfit stand apart, in words; the figure on demand. */
function Contrast({ contrast }: { contrast: NonNullable<StyleProfile['contrast']> }) {
	const { mean } = contrast;
	const words = mean >= CLEARLY_APART ? 'apartStrong' : mean >= A_LITTLE_APART ? 'apartMiddling' : 'apartSoft';
	return (
		<div className="small">
			<p>{say(`styleShown.${words}`)}</p>
			<details className="quiet">
				<summary>{say('styleShown.figures')}</summary>
				<p>
					{say('styleShown.contrast', { difference: mean.toFixed(0) })} {seenFrom()}
				</p>
			</details>
		</div>
	);
}

const kindsOf = (family: KindFamily): string => listText(KIND_FAMILIES[family].map((kind) => say(`kinds.${kind}`)));

/** The same for each sort of piece: coats are held against coats. Families that no picture shows for sure are left out. */
function StyleBySort({ families }: { families: StyleProfile['families'] }) {
	if (families.length === 0) return null;
	const slotOf = (family: KindFamily) => slotOfKind(KIND_FAMILIES[family][0]);
	return (
		<details>
			<summary>{say('styleShown.bySort')}</summary>
			<div className="style-columns">
				{SLOTS.flatMap((slot) => families.filter(({ family }) => slotOf(family) === slot)).map(({ family, axes }) => (
					<div key={family}>
						<h3 className="small">{kindsOf(family)}</h3>
						<ul>
							{axes.map((axis) => (
								<Axis key={axis.axis} axis={axis} />
							))}
						</ul>
					</div>
				))}
			</div>
		</details>
	);
}

/** What the pictures have in common besides their colours. */
export function StyleAxes({ style }: { style: StyleProfile }) {
	if (style.photos === 0) return null;
	return (
		<section className="section" aria-labelledby="style">
			<h2 id="style">{say('styleShown.title')}</h2>
			<div className="style-columns">
				<div>
					<p className="small quiet">{say('styleShown.key')}</p>
					<ul>
						{style.axes.map((axis) => (
							<Axis key={axis.axis} axis={axis} />
						))}
					</ul>
					{style.contrast ? <Contrast contrast={style.contrast} /> : null}
				</div>
				<table>
					<caption>
						{say('styleShown.wornIn', { pictures: say('counts.pictures', { count: style.wornPhotos }) })}
					</caption>
					<tbody>
						{SLOTS.filter((slot) => style.slots[slot] > 0).map((slot) => (
							<tr key={slot}>
								<th scope="row">{say(`slots.${slot}`)}</th>
								<td className="figure">{percentText(style.slots[slot])}</td>
							</tr>
						))}
						{style.kinds.map(({ kind, share }) => (
							<tr key={kind}>
								<th scope="row">{say('styleShown.byItself', { kind: say(`kinds.${kind}`) })}</th>
								<td className="figure">{percentText(share)}</td>
							</tr>
						))}
					</tbody>
				</table>
			</div>
			<StyleBySort families={style.families} />
		</section>
	);
}
