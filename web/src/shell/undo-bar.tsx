import { useChange } from '../api/change.ts';
import { request } from '../api/request.ts';
import { Button } from '../parts/button.tsx';

/** Takes back the last decision, or does it again; says which one. */
export function UndoBar() {
	const undo = useChange(() => request<{ sentence: string }>('POST', '/api/undo'));
	const redo = useChange(() => request<{ sentence: string }>('POST', '/api/redo'));
	const problem = undo.problem ?? redo.problem;
	return (
		<span className="row">
			<Button look="bare" small onPress={() => undo.run(undefined)} isDisabled={undo.busy}>
				Undo
			</Button>
			<Button look="bare" small onPress={() => redo.run(undefined)} isDisabled={redo.busy}>
				Redo
			</Button>
			{problem ? (
				<span className="small warn" role="alert">
					{problem.message}
				</span>
			) : null}
		</span>
	);
}
