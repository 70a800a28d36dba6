const WITHIN = /^\/homes\/[\w-]+/;

/** Whether the program keeps many homes: it says so in the page that it sends. */
export const isHosted = (): boolean => document.documentElement.dataset.form === 'hosted';

/** Where the home on view stands, as "/homes/ID"; '' where one home alone is kept, or none is open. */
export const homeAddress = (): string =>
	typeof location === 'undefined' ? '' : (WITHIN.exec(location.pathname)?.[0] ?? '');
