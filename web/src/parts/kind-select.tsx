import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import { KIND_NAMES, type Kind } from '../../../src/wardrobe/words/kind.ts';

/**
 * What is chosen and not yet said. By mouse or finger a choice is said at once; typing and arrow keys only choose, and Enter or leaving the field
 * says it, once.
 */
function useKindDraft(kind: Kind, onSay: (kind: Kind) => void, onEnter: (() => void) | undefined) {
	const [draft, setDraft] = useState(kind);
	const byKeys = useRef(false);
	const saidLast = useRef(kind);
	useEffect(() => {
		setDraft(kind);
		saidLast.current = kind;
	}, [kind]);
	const sayIt = (next: Kind) => {
		saidLast.current = next;
		onSay(next);
	};
	return {
		value: draft,
		onPointerDown: () => {
			byKeys.current = false;
		},
		onChange: (next: Kind) => {
			setDraft(next);
			if (!byKeys.current) sayIt(next);
		},
		onKeyDown: (event: KeyboardEvent) => {
			byKeys.current = true;
			if (event.key === 'Escape') setDraft(saidLast.current);
			if (event.key !== 'Enter') return;
			event.preventDefault();
			sayIt(draft);
			onEnter?.();
		},
		onBlur: () => draft !== saidLast.current && sayIt(draft),
	};
}

const Options = ({ kinds }: { kinds: readonly Kind[] }) =>
	kinds.map((kind) => (
		<option key={kind} value={kind}>
			{say(`kinds.${kind}`)}
		</option>
	));

/** The kind of a garment, to be typed or chosen; what it may be stands first. */
export function KindSelect({
	label,
	kind,
	likely = [],
	open,
	onSay,
	onEnter,
}: {
	label: string;
	kind: Kind;
	/** What the photo suggests beside, likeliest first. */
	likely?: readonly Kind[];
	/** Whether it is still to be confirmed; marks the field for whoever looks for the next one. */
	open: boolean;
	/** Called once for each thing said; the same kind confirms what was suggested. */
	onSay: (kind: Kind) => void;
	/** Called after Enter, to go on to the next one. */
	onEnter?: () => void;
}) {
	const { onChange, ...field } = useKindDraft(kind, onSay, onEnter);
	return (
		<select
			{...field}
			className="select"
			aria-label={label}
			data-kind-open={open || undefined}
			onChange={(event) => onChange(event.target.value as Kind)}
		>
			{likely.length > 0 ? (
				<>
					<optgroup label={say('confirm.likely')}>
						<Options kinds={likely} />
					</optgroup>
					<optgroup label={say('confirm.others')}>
						<Options kinds={KIND_NAMES.filter((one) => !likely.includes(one))} />
					</optgroup>
				</>
			) : (
				<Options kinds={KIND_NAMES} />
			)}
		</select>
	);
}

/** Moves the focus to the next kind that is still to be confirmed, below this one or else above it; `place` holds them all. */
export function focusNextKind(place: HTMLElement | null): void {
	const open = [...(place?.querySelectorAll<HTMLElement>('[data-kind-open]') ?? [])];
	const at = open.indexOf(document.activeElement as HTMLElement);
	(open[at + 1] ?? open.find((_, index) => index !== at))?.focus();
}
