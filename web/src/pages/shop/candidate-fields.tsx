import { say } from '../../../../src/language/speak.ts';
import { KIND_NAMES } from '../../../../src/wardrobe/words/kind.ts';
import type { CandidateDetails } from '../../../../src/wardrobe/words/wish.ts';
import { Check, SelectField, TextField } from '../../parts/field.tsx';
import { PriceField } from '../../parts/price-field.tsx';

/** What the person tells of a piece found for sale. */
export function CandidateFields({
	candidate,
	onChange,
}: {
	candidate: CandidateDetails;
	onChange: (changes: Partial<CandidateDetails>) => void;
}) {
	return (
		<>
			<TextField label={say('fields.name')} value={candidate.name} onCommit={(name) => onChange({ name })} />
			<SelectField
				label={say(candidate.kindFrom === 'user' ? 'fields.kind' : 'shopPage.kindSuggested')}
				value={candidate.kind}
				options={KIND_NAMES.map((kind) => ({ value: kind, label: say(`kinds.${kind}`) }))}
				onChange={(kind) => onChange({ kind })}
			/>
			<PriceField price={candidate.price} onCommit={(price) => onChange({ price })} />
			<TextField
				label={say('shopPage.where')}
				value={candidate.source}
				maxLength={2000}
				onCommit={(source) => onChange({ source })}
			/>
			<Check label={say('shopPage.used')} checked={candidate.used} onChange={(used) => onChange({ used })} />
		</>
	);
}
