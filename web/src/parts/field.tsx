import { type ReactNode, useEffect, useId, useState } from 'react';

/** A labelled control with an optional hint; `children` gets the ids to wire up. */
export function Field({
	label,
	hint,
	children,
}: {
	label: string;
	hint?: string | undefined;
	children: (ids: { id: string; 'aria-describedby': string | undefined }) => ReactNode;
}) {
	const id = useId();
	const hintId = hint ? `${id}-hint` : undefined;
	return (
		<div className="field">
			<label className="field-label" htmlFor={id}>
				{label}
			</label>
			{children({ id, 'aria-describedby': hintId })}
			{hint ? (
				<span className="field-hint" id={hintId}>
					{hint}
				</span>
			) : null}
		</div>
	);
}

type Text = { label: string; value: string; hint?: string; onCommit: (value: string) => void };

/** What is typed, sent on leaving the field or Enter; a value that changes elsewhere is taken over. */
function useDraft(value: string, onCommit: (value: string) => void) {
	const [draft, setDraft] = useState(value);
	useEffect(() => setDraft(value), [value]);
	return { draft, setDraft, commit: () => draft !== value && onCommit(draft) };
}

/** One line of text, a number or a date. */
export function TextField({
	label,
	value,
	hint,
	onCommit,
	type = 'text',
	live = false,
	...rest
}: Text & {
	/** Sends every letter at once instead of on leaving the field: for forms with a button of their own. */
	live?: boolean;
	type?: 'text' | 'number' | 'date' | 'search';
	min?: number | string;
	max?: number | string;
	step?: number | 'any';
	maxLength?: number;
	placeholder?: string;
	required?: boolean;
}) {
	const { draft, setDraft, commit } = useDraft(value, onCommit);
	return (
		<Field label={label} hint={hint}>
			{(ids) => (
				<input
					{...ids}
					{...rest}
					type={type}
					className="input"
					value={draft}
					onChange={(event) => {
						setDraft(event.target.value);
						if (live) onCommit(event.target.value);
					}}
					onBlur={commit}
					onKeyDown={(event) => event.key === 'Enter' && commit()}
				/>
			)}
		</Field>
	);
}

/** Several lines of text. */
export function TextArea({ label, value, hint, onCommit }: Text) {
	const { draft, setDraft, commit } = useDraft(value, onCommit);
	return (
		<Field label={label} hint={hint}>
			{(ids) => (
				<textarea
					{...ids}
					className="textarea"
					value={draft}
					onChange={(event) => setDraft(event.target.value)}
					onBlur={commit}
				/>
			)}
		</Field>
	);
}

/** One of a short list. */
export function SelectField<T extends string>({
	label,
	value,
	options,
	hint,
	onChange,
}: {
	label: string;
	value: T;
	options: readonly { readonly value: T; readonly label: string }[];
	hint?: string;
	onChange: (value: T) => void;
}) {
	return (
		<Field label={label} hint={hint}>
			{(ids) => (
				<select {...ids} className="select" value={value} onChange={(event) => onChange(event.target.value as T)}>
					{options.map((option) => (
						<option key={option.value} value={option.value}>
							{option.label}
						</option>
					))}
				</select>
			)}
		</Field>
	);
}

/** A box to tick. */
export function Check({
	label,
	checked,
	onChange,
}: {
	label: string;
	checked: boolean;
	onChange: (checked: boolean) => void;
}) {
	return (
		<label className="check">
			<input type="checkbox" checked={checked} onChange={(event) => onChange(event.target.checked)} />
			{label}
		</label>
	);
}
