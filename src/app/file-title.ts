/** The title that a file's name gives: without folder and ending. */
export const fileTitle = (fileName: string): string =>
	fileName
		.replace(/^.*[\\/]/, '')
		.replace(/\.[A-Za-z0-9]{1,5}$/, '')
		.slice(0, 200);
