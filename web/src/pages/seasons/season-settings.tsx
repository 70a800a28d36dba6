import { say } from '../../../../src/language/speak.ts';
import { YEAR_PARTS } from '../../../../src/wardrobe/words/garment.ts';
import { weightsOf } from '../../../../src/wardrobe/words/line-up-weights.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Check, Field, SelectField, TextArea, TextField } from '../../parts/field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { weightWord } from '../../parts/weight-word.ts';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { SeasonDaysFields } from './season-days.tsx';

const WEIGHTS = ['pictures', 'enough', 'palette', 'fit', 'loved', 'outfits'] as const;

type PartProps = { season: Season; onChange: (changes: Partial<Season>) => void };

/** Its name and its time. */
function AboutFields({ season, onChange }: PartProps) {
	return (
		<section className="section stack" aria-labelledby="about">
			<h2 id="about">{say('seasonSettings.about')}</h2>
			<div className="fields">
				<TextField label={say('fields.name')} value={season.name} onCommit={(name) => onChange({ name })} />
				<TextField
					label={say('seasonsPage.from')}
					type="date"
					value={season.startsOn}
					onCommit={(startsOn) => startsOn && onChange({ startsOn })}
				/>
				<TextField
					label={say('seasonsPage.to')}
					type="date"
					value={season.endsOn}
					onCommit={(endsOn) => endsOn && onChange({ endsOn })}
				/>
				<SelectField
					label={say('seasonSettings.part')}
					value={season.yearPart}
					options={YEAR_PARTS.map((part) => ({ value: part, label: say(`yearParts.${part}`) }))}
					onChange={(yearPart) => onChange({ yearPart })}
				/>
				<NumberField
					label={say('seasonSettings.waiting')}
					value={season.waitingDays}
					least={0}
					most={3650}
					onCommit={(waitingDays) => onChange({ waitingDays })}
				/>
			</div>
			<Check
				label={say('seasonSettings.archive')}
				checked={season.archived}
				onChange={(archived) => onChange({ archived })}
			/>
		</section>
	);
}

/** How many garments are wanted of each slot, and in all. */
function QuotaFields({ season, onChange }: PartProps) {
	const { quotas, targetCount } = season;
	const sum = Object.values(quotas).reduce((all, count) => all + count, 0);
	return (
		<section className="section" aria-labelledby="quotas">
			<h2 id="quotas">{say('seasonSettings.wanted')}</h2>
			<div className="fields fields-short">
				{SLOTS.map((slot) => (
					<NumberField
						key={slot}
						label={say(`slots.${slot}`)}
						value={quotas[slot]}
						least={0}
						most={200}
						onCommit={(count) => onChange({ quotas: { ...quotas, [slot]: count } })}
					/>
				))}
				<NumberField
					label={say('seasonSettings.inAll')}
					value={targetCount}
					least={1}
					most={500}
					hint={sum === targetCount ? say('seasonSettings.isSum') : say('seasonSettings.sumIs', { sum })}
					onCommit={(count) => onChange({ targetCount: count })}
				/>
			</div>
		</section>
	);
}

/** How much each side of a set counts when one is chosen, 0 to 1; kept once the slider is let go. */
function WeightFields({ season, onChange }: PartProps) {
	const weights = weightsOf(season);
	return (
		<section className="section" aria-labelledby="weights">
			<h2 id="weights">{say('seasonSettings.counts')}</h2>
			<div className="fields">
				{WEIGHTS.map((key) => {
					const keep = (slider: HTMLInputElement) => onChange({ weights: { ...weights, [key]: Number(slider.value) } });
					const what = say(`lineUpWeights.${key}`);
					return (
						<Field key={key} label={say('seasonSettings.weight', { what, weight: weightWord(weights[key]) })}>
							{(ids) => (
								<input
									{...ids}
									type="range"
									min={0}
									max={1}
									step={0.05}
									key={weights[key]}
									defaultValue={weights[key]}
									onPointerUp={(event) => keep(event.currentTarget)}
									onKeyUp={(event) => keep(event.currentTarget)}
								/>
							)}
						</Field>
					);
				})}
			</div>
		</section>
	);
}

/** What the user sets of a season: its name, its size, what each slot needs, what counts. */
export default function SeasonSettings({ report }: PageProps) {
	const { season } = report;
	const change = useChange((changes: Partial<Season>) => changeThing('changeSeason', season.id, season, changes));
	return (
		<div className="page-body">
			<PageTitle name={season.name} purpose={say('seasonSettings.purpose')} />
			<Problem of={change.problem} />
			<AboutFields season={season} onChange={change.run} />
			<SeasonDaysFields season={season} onChange={(days) => change.run({ days })} />
			<QuotaFields season={season} onChange={change.run} />
			<WeightFields season={season} onChange={change.run} />
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
