import { numberText } from '../../../../src/language/numbers.ts';
import { say } from '../../../../src/language/speak.ts';
import { YEAR_PARTS } from '../../../../src/wardrobe/words/garment.ts';
import { weightsOf } from '../../../../src/wardrobe/words/line-up-weights.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Check, Field, SelectField, TextArea, TextField } from '../../parts/field.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { SeasonDaysFields } from './season-days.tsx';

const WEIGHTS = ['pictures', 'enough', 'palette', 'fit', 'loved', 'outfits'] as const;

const whole = (text: string, least: number, most: number) =>
	Math.min(most, Math.max(least, Math.round(Number(text) || least)));

/** What the user sets of a season: its name, its size, what each slot needs, what counts. */
export default function SeasonSettings({ report }: PageProps) {
	const { season } = report;
	const change = useChange((changes: Partial<Season>) => changeThing('changeSeason', season.id, season, changes));
	const weights = weightsOf(season);
	const quotas = Object.values(season.quotas).reduce((sum, count) => sum + count, 0);
	return (
		<div className="page-body">
			<PageTitle name={season.name} purpose={say('seasonSettings.purpose')} />
			<Problem of={change.problem} />
			<section className="section" aria-labelledby="about">
				<h2 id="about">{say('seasonSettings.about')}</h2>
				<div className="fields">
					<TextField label={say('fields.name')} value={season.name} onCommit={(name) => change.run({ name })} />
					<TextField
						label={say('seasonsPage.from')}
						type="date"
						value={season.startsOn}
						onCommit={(startsOn) => startsOn && change.run({ startsOn })}
					/>
					<TextField
						label={say('seasonsPage.to')}
						type="date"
						value={season.endsOn}
						onCommit={(endsOn) => endsOn && change.run({ endsOn })}
					/>
					<SelectField
						label={say('seasonSettings.part')}
						value={season.yearPart}
						options={YEAR_PARTS.map((part) => ({ value: part, label: say(`yearParts.${part}`) }))}
						onChange={(yearPart) => change.run({ yearPart })}
					/>
					<TextField
						label={say('seasonSettings.waiting')}
						type="number"
						min={0}
						max={3650}
						value={String(season.waitingDays)}
						onCommit={(text) => change.run({ waitingDays: whole(text, 0, 3650) })}
					/>
				</div>
				<Check
					label={say('seasonSettings.archive')}
					checked={season.archived}
					onChange={(archived) => change.run({ archived })}
				/>
			</section>
			<SeasonDaysFields season={season} onChange={(days) => change.run({ days })} />
			<section className="section" aria-labelledby="quotas">
				<h2 id="quotas">{say('seasonSettings.wanted')}</h2>
				<div className="fields">
					{SLOTS.map((slot) => (
						<TextField
							key={slot}
							label={say(`slots.${slot}`)}
							type="number"
							min={0}
							max={200}
							value={String(season.quotas[slot])}
							onCommit={(text) => change.run({ quotas: { ...season.quotas, [slot]: whole(text, 0, 200) } })}
						/>
					))}
					<TextField
						label={say('seasonSettings.inAll')}
						type="number"
						min={1}
						max={500}
						value={String(season.targetCount)}
						hint={
							quotas === season.targetCount ? say('seasonSettings.isSum') : say('seasonSettings.sumIs', { sum: quotas })
						}
						onCommit={(text) => change.run({ targetCount: whole(text, 1, 500) })}
					/>
				</div>
			</section>
			<section className="section" aria-labelledby="weights">
				<h2 id="weights">{say('seasonSettings.counts')}</h2>
				<div className="fields">
					{WEIGHTS.map((key) => (
						<Field
							key={key}
							label={say('seasonSettings.weight', {
								what: say(`lineUpWeights.${key}`),
								weight: numberText(weights[key]),
							})}
						>
							{(ids) => (
								<input
									{...ids}
									type="range"
									min={0}
									max={1}
									step={0.05}
									key={weights[key]}
									defaultValue={weights[key]}
									onPointerUp={(event) =>
										change.run({ weights: { ...weights, [key]: Number(event.currentTarget.value) } })
									}
									onKeyUp={(event) => change.run({ weights: { ...weights, [key]: Number(event.currentTarget.value) } })}
								/>
							)}
						</Field>
					))}
				</div>
			</section>
			<section className="section" aria-labelledby="season-notes">
				<h2 id="season-notes">{say('fields.notes')}</h2>
				<TextArea
					label={say('seasonSettings.nextYear')}
					value={season.notes}
					onCommit={(notes) => change.run({ notes })}
				/>
			</section>
			<NextStepLink report={report} place="season" />
		</div>
	);
}
