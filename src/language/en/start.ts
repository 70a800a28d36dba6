/** The first page. */
export const START = {
	start: {
		title: 'Plan one season from a small set of clothes that go together.',
		what: 'Photos of your clothes and pictures of how the season should look go in; what fits, what is missing and a small set that works come out, each with its reason. Nothing leaves this machine.',
		begin: 'Begin with your own season',
		demoTitle: 'Or look round first',
		demoWhat: 'An invented wardrobe: a beekeeper in a river town. One click puts it in the bin again.',
		demo: 'Open the demo',
		demoBusy: 'Opening the demo …',
		demoTime: 'This takes about half a minute.',
		path: 'The way of a season',
		'look-back': 'what was worn, what was missed',
		direction: 'colours from your pictures',
		sort: 'keep, store or let go',
		'line-up': 'the small set',
		'wish-list': 'what is missing',
		shop: 'checked before you buy',
		archived: 'Archived seasons',
		beside: 'All seasons: backups, devices, language',
		loading: 'your seasons',
	},
} as const;
