/** Lets a number of pieces of work run side by side, and one alone where that is asked. */
export type Turns = {
	/** Runs the work once one of the places is free; so a time limit inside it measures the work and not the queue. */
	take<T>(work: () => Promise<T>): Promise<T>;
	/** Runs the work while nothing else runs; what comes meanwhile waits. */
	takeAlone<T>(work: () => Promise<T>): Promise<T>;
};

/** `places` = pieces of work side by side. First come, first served, whatever is asked. */
export function createTurns(places: number): Turns {
	let free = places;
	const waiting: { readonly needs: number; readonly begin: () => void }[] = [];

	function advance(): void {
		for (let first = waiting[0]; first && first.needs <= free; first = waiting[0]) {
			waiting.shift();
			free -= first.needs;
			first.begin();
		}
	}
	async function run<T>(needs: number, work: () => Promise<T>): Promise<T> {
		await new Promise<void>((begin) => {
			waiting.push({ needs, begin });
			advance();
		});
		try {
			return await work();
		} finally {
			free += needs;
			advance();
		}
	}
	return { take: (work) => run(1, work), takeAlone: (work) => run(places, work) };
}
