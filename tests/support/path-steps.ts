import { beforeEach } from 'vitest';

// The tests of a file in the browser are steps of one path: where one failed, those after it would fail for its reason and not their own.
beforeEach(({ task, skip }) => {
	const failed = task.suite?.tasks.find((other) => other.result?.state === 'fail');
	if (failed) skip(`an earlier step failed: ${failed.name}`);
});
