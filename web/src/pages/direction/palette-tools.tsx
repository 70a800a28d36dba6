import { listText } from '../../../../src/language/numbers.ts';
import { say } from '../../../../src/language/speak.ts';
import { downloadOf } from '../../api/call.ts';
import { Button } from '../../parts/button.tsx';

const FILES = [
	['getPaletteCss', 'palette.css'],
	['getPaletteTokens', 'palette.tokens'],
	['getPaletteSvg', 'palette.svg'],
	['getPalettePng', 'palette.png'],
] as const;

/** Merging the colours that are ticked; the palette as files for other programs on demand. */
export function PaletteTools({
	seasonId,
	names,
	isBusy,
	onMerge,
}: {
	seasonId: string;
	/** Of the colours that are ticked. */
	names: readonly string[];
	isBusy: boolean;
	onMerge: () => void;
}) {
	return (
		<div className="palette-tools">
			<Button isPending={isBusy} isDisabled={names.length < 2} onPress={onMerge}>
				{names.length < 2 ? say('palette.mergeHow') : say('palette.merge', { names: listText(names) })}
			</Button>
			<details>
				<summary>{say('palette.files')}</summary>
				<div className="row">
					{FILES.map(([file, name]) => (
						<a key={file} href={downloadOf(file, { params: { id: seasonId } })}>
							{say(name)}
						</a>
					))}
				</div>
			</details>
		</div>
	);
}
