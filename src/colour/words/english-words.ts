import type { ColourWord } from './word.ts';

/**
 * The English words that clothes are described by, each with the survey's entries that it stands for, commonest first, and their mean colours in sRGB.
 * Source: "Many Languages Many Colors", English, Interactive Data Lab, University of Washington, CC0 1.0, read in npm `color-name-lists`
 * 3.33.2. Which of the 545 entries stand for which word, and why others are left out: fixtures/colour-words/english.csv. The first of a
 * word's basic terms is the one it is filed under; the second is one that people also file it under (told by a language model).
 */
export const ENGLISH_WORDS: readonly ColourWord[] = [
	{ word: 'black', basic: ['black'], entries: 'black #221f22' },
	{ word: 'charcoal', basic: ['grey', 'black'], entries: 'charcoal #44464c, charcoal grey #605a5b' },
	{ word: 'dark grey', basic: ['grey'], entries: 'dark grey #4c5153' },
	{ word: 'grey', basic: ['grey'], entries: 'grey #919695, cool grey #81909e, warm grey #928b85' },
	{ word: 'light grey', basic: ['grey'], entries: 'light grey #c4c9c2, pale grey #c9ccc8, silver #b9c4c7' },
	{ word: 'white', basic: ['white'], entries: 'white #e3e9dc' },
	{ word: 'off-white', basic: ['white'], shade: 'pale', entries: 'off white #e2e8d3' },
	{ word: 'ivory', basic: ['white'], shade: 'pale', entries: 'ivory #dcddba, eggshell #dfe5bf' },
	{ word: 'cream', basic: ['white', 'yellow'], shade: 'pale', entries: 'cream #ede5b2, ecru #e2d7a5' },
	{ word: 'beige', basic: ['brown'], entries: 'beige #d4bc8f, sand #d8c17f, light tan #e4d29d' },
	{
		word: 'tan',
		basic: ['brown'],
		entries: 'tan #cdab73, dark tan #a78450, dark beige #b79b6d, sandstone #d3ab77, hazel #a1905d',
	},
	{ word: 'camel', basic: ['brown'], entries: 'camel #c79455, caramel #c18f3d' },
	{
		word: 'taupe',
		basic: ['brown', 'grey'],
		shade: 'dull',
		entries: 'taupe #af977e, greige #a59e8e, greyish brown #907e6f, grey brown #7e6f5f, brown grey #8b7c65',
	},
	{
		word: 'light brown',
		basic: ['brown'],
		entries: 'light brown #ae7f51, pale brown #aa8567, mocha #ac885e, tan brown #a86f3f',
	},
	{
		word: 'brown',
		basic: ['brown'],
		entries:
			'brown #885833, medium brown #a06139, coffee #784d32, warm brown #864a21, raw umber #815f30, sepia #a56c34, umber #a46536',
	},
	{ word: 'dark brown', basic: ['brown'], entries: 'dark brown #4e2d21, chocolate #643522, deep brown #4a2a22' },
	{
		word: 'chestnut',
		basic: ['brown'],
		shade: 'dull',
		entries: 'chestnut #8d4d2d, chestnut brown #87432b, burnt umber #924e2b, chocolate brown #703c2b, mahogany #712d2d',
	},
	{
		word: 'rust',
		basic: ['brown', 'orange'],
		entries:
			'rust #b4502c, sienna #b26431, burnt sienna #ac582b, russet #af5b3f, auburn #ab5334, rust red #a9422c, rust brown #9f4d2c',
	},
	{ word: 'terracotta', basic: ['orange', 'brown'], entries: 'terracotta #c06043, clay #b47e62' },
	{
		word: 'burnt orange',
		basic: ['orange'],
		entries:
			'burnt orange #db6b25, dark orange #e6671e, rust orange #db6c1b, rusty orange #cf601c, dull orange #e5873b, brownish orange #c06924, brown orange #ca7222, orange brown #c37234, copper #c06e30',
	},
	{
		word: 'orange',
		basic: ['orange'],
		entries:
			'orange #f48425, tangerine #f9962d, pumpkin #ee8527, pumpkin orange #f38121, bright orange #f87022, light orange #f7a736, yellow orange #fab41a, orange yellow #f8b81d',
	},
	{
		word: 'orange-red',
		basic: ['red', 'orange'],
		entries: 'red orange #f34e1e, orange red #f04a25, reddish orange #f25426, blood orange #f25120',
	},
	{
		word: 'peach',
		basic: ['orange', 'pink'],
		entries: 'peach #f0a985, apricot #f0b477, pale orange #eda85e, pastel orange #eb9959',
	},
	{
		word: 'coral',
		basic: ['pink', 'red', 'orange'],
		entries:
			'coral #ed7069, coral pink #f16066, salmon #e97d76, salmon pink #ed7c7e, dark coral #d6575d, dark salmon #d46662, dark peach #dd9478, peach pink #ee938c',
	},
	{
		word: 'red',
		basic: ['red'],
		entries:
			'red #e42833, bright red #f32130, scarlet #da2a36, scarlet red #ce242c, crimson #c1263a, crimson red #cb2037, ruby #ce1b49, ruby red #c82548, cherry #dd1f4a, cherry red #e12240, carmine #bc2749, fire engine red #f32829, firetruck red #f22d2b, vermillion #e14038, tomato red #e53b21, light red #e64b56, rose red #da2c4a, pale red #d95b5e, brick red #ad342f, burnt red #ab382e',
	},
	{ word: 'dark red', basic: ['red'], entries: 'dark red #9a222a, deep red #b12429, blood red #b02327' },
	{
		word: 'brick red',
		basic: ['red', 'brown'],
		shade: 'dull',
		entries: 'brick #a84837, red brown #923c34, reddish brown #953e2e, brown red #903828, brownish red #9c453e',
	},
	{
		word: 'burgundy',
		basic: ['red', 'purple'],
		entries: 'burgundy #802539, maroon #84273a, wine #83274b, wine red #8a2033, oxblood #802624, dark maroon #5b2231',
	},
	{
		word: 'raspberry',
		basic: ['pink', 'red'],
		entries:
			'raspberry #ce2a6d, cranberry #cd285e, pinkish red #e9265a, pink red #eb2858, red pink #ef265d, reddish pink #ed346b, strawberry #f22b5e, rouge #c43e63',
	},
	{
		word: 'hot pink',
		basic: ['pink'],
		entries:
			'hot pink #f22d9f, neon pink #f135c4, bright pink #f13db1, electric pink #e83acc, barbie pink #f24aaa, deep pink #e63186, cerise #e33884',
	},
	{
		word: 'pink',
		basic: ['pink'],
		entries:
			'pink #ed5bac, rose #e15f84, rose pink #e16c93, bubblegum #ea6eac, bubblegum pink #f079c0, carnation pink #f296b9, dark pink #d54083, dark rose #c34d74',
	},
	{
		word: 'light pink',
		basic: ['pink'],
		entries:
			'light pink #eea7cc, baby pink #f0aece, pale pink #e8b0c3, pastel pink #e7a8c4, powder pink #eba4c6, blush pink #e696a3, soft pink #e38dc5',
	},
	{
		word: 'dusty pink',
		basic: ['pink'],
		shade: 'dull',
		entries:
			'dusty pink #ce899c, dusty rose #c57c8b, dusky pink #d78da5, dusky rose #ce758e, muted pink #d68ba8, dull pink #cf82a0, grey pink #b88e9a, blush #dd8d95',
	},
	{
		word: 'fuchsia',
		basic: ['pink', 'purple'],
		entries:
			'fuschia #e132b4, fuchsia pink #e540b0, magenta #d930ac, bright magenta #ea31d1, light magenta #dd5ec6, purple pink #d54ac4, pink purple #d644c6, pinkish purple #d847cd, purplish pink #d642cc, hot purple #c332d9',
	},
	{
		word: 'berry',
		basic: ['purple', 'pink'],
		entries:
			'berry #b5387a, dark magenta #9c2b78, deep magenta #a0276a, red purple #a12d75, red violet #b93486, reddish purple #9f3a85, purple red #9c3068, mulberry #9c387a, dark fuschia #ad267b',
	},
	{
		word: 'plum',
		basic: ['purple'],
		entries:
			'plum #78356b, dark plum #552255, plum purple #592b63, aubergine #60265a, eggplant #5f2c67, eggplant purple #5e2c68',
	},
	{
		word: 'dark purple',
		basic: ['purple'],
		entries:
			'dark purple #5e2b73, deep purple #5b2976, dark violet #6c2e7e, deep violet #59297b, midnight purple #44216a, very dark purple #401e46, dark indigo #383067',
	},
	{
		word: 'purple',
		basic: ['purple'],
		entries:
			'purple #9443c0, violet #9246c4, medium purple #9951c9, violet purple #9944be, bright purple #aa39e0, bright violet #b93ee7, vibrant purple #8b2fda, grape #7a399d, grape purple #7f3387, royal purple #6d2ca4, amethyst #994fc4, electric purple #a53de1, neon purple #b934e6, iris #875dc3, orchid #c659c7',
	},
	{
		word: 'lavender',
		basic: ['purple'],
		entries:
			'lavender #b28cd7, lilac #b98eda, light purple #bb76d8, pale purple #ad87c0, pastel purple #b38bd2, light violet #b57ce1, lavender purple #b478d6, lilac purple #a682d2, soft purple #a28bd4, baby purple #c99de2, light lavender #d2b8e9, dark lilac #9b71bf, dark lavender #956bb9, heather #b3a5c3',
	},
	{
		word: 'mauve',
		basic: ['purple'],
		shade: 'dull',
		entries:
			'mauve #aa6991, dark mauve #934f74, dusty purple #947097, faded purple #9476a3, muted purple #886497, dull purple #82598e, dusky purple #7b628e, grey purple #8f7a98, purple grey #8b7a95, greyish purple #7b698d',
	},
	{
		word: 'violet',
		basic: ['purple', 'blue'],
		entries:
			'indigo #533cb9, blue purple #6649d2, purple blue #5f4dd7, blue violet #6641d4, violet blue #5537cf, blurple #6351d9, bluish purple #6a5eda, blueish purple #6c58d8, purplish blue #5549ca',
	},
	{
		word: 'periwinkle',
		basic: ['blue', 'purple'],
		entries:
			'periwinkle #8b92e1, periwinkle blue #699ae8, dark periwinkle #6768c5, cornflower #5592ed, cornflower blue #458ceb',
	},
	{
		word: 'blue',
		basic: ['blue'],
		entries:
			'blue #2778e0, bright blue #1a91f1, medium blue #1780ed, mid blue #2675e2, azure #1f98eb, azure blue #298de4, ocean blue #267fce, ocean #277cc2, cerulean #2688e6, cerulean blue #2e8de7, electric blue #1980f1, marine blue #1b5dc3, darkish blue #426abf, dark sky blue #368de8, sea blue #2b9ad3',
	},
	{
		word: 'light blue',
		basic: ['blue'],
		entries:
			'light blue #4ec2f0, sky blue #4abcf1, sky #51c4f3, light sky blue #85dbf1, baby blue #72c9f0, pale blue #86bee2, powder blue #7db3ec, pastel blue #82bce3, ice blue #9ce2ef',
	},
	{
		word: 'dusty blue',
		basic: ['blue'],
		shade: 'dull',
		entries:
			'dusty blue #5b8cbc, faded blue #6096c5, muted blue #487cba, dull blue #437bb6, dusky blue #5083b1, soft blue #428bcf, slate blue #5980a6, steel blue #5c88a9, cadet blue #427baa',
	},
	{ word: 'denim blue', basic: ['blue'], entries: 'denim #3673b4, denim blue #3a6dac, jean blue #4c79b2' },
	{
		word: 'blue-grey',
		basic: ['grey', 'blue'],
		shade: 'dull',
		entries:
			'blue grey #6f90a2, grey blue #6a8da7, greyish blue #688ca9, bluish grey #849aa7, blueish grey #738d9f, slate #687f89, slate grey #748089, steel #788e9b, steel grey #7b8a9a',
	},
	{
		word: 'royal blue',
		basic: ['blue'],
		entries:
			'royal blue #253dd9, royal #453ed6, true blue #1a57e8, cobalt #2653d5, cobalt blue #234ddf, ultramarine #284bda, ultramarine blue #2c32d1, sapphire #274fcb, sapphire blue #294dc6, deep sea blue #254bb6, primary blue #1f4bdc, indigo blue #3042b8',
	},
	{ word: 'dark blue', basic: ['blue'], entries: 'dark blue #213baf, deep blue #2338bd, prussian blue #224c95' },
	{
		word: 'navy',
		basic: ['blue'],
		entries:
			'navy #223577, navy blue #23387e, midnight blue #232b6c, midnight #2c2e5c, dark navy #1e2a50, dark navy blue #1f2f4e, blue black #1b2952, very dark blue #19215c',
	},
	{
		word: 'turquoise',
		basic: ['blue', 'green'],
		entries:
			"turquoise #38d3c6, cyan #3ddde1, aqua #3dddd2, aquamarine #3ad4c2, tiffany blue #54dad5, light turquoise #52e6db, light teal #66ddc0, bright teal #39ecc8, robin's egg blue #5bd2e5, robins egg #6dd0e8, turquoise blue #31d3dd, teal blue #3ebbc3, light cyan #79e6e7, light aqua #72ebd6, aqua blue #32d3e3, duck egg blue #94cfcf",
	},
	{
		word: 'teal',
		basic: ['green', 'blue'],
		entries:
			'teal #3ec5b4, dark teal #297174, dark turquoise #2f878a, dark cyan #2d8d97, dark aqua #3a8e8d, dark blue green #1f6262',
	},
	{
		word: 'blue-green',
		basic: ['green', 'blue'],
		entries:
			'blue green #3ab696, green blue #34bc96, bluish green #35ca8f, blueish green #42be8a, greenish blue #39b49b, teal green #46c290, turquoise green #32d99d, aqua green #40d89d, ocean green #44ae84',
	},
	{
		word: 'mint',
		basic: ['green'],
		entries:
			'mint #76eca8, mint green #6ceca1, seafoam #65e7ac, seafoam green #60e7a5, spearmint #56d48c, bright mint #3ff3a9, dark mint #56be8a, dark mint green #53c885, light blue green #64e8c0, sea green #53d599',
	},
	{
		word: 'emerald',
		basic: ['green'],
		entries: 'emerald #35a761, emerald green #2c9654, jade #4bab79, jade green #5fb776',
	},
	{
		word: 'green',
		basic: ['green'],
		entries:
			'green #5bc256, medium green #51b959, mid green #58a854, grass green #5eba3f, grass #5fba3f, leaf green #66bd46, leafy green #65ab32, kelly green #3bb249, irish green #34b24c, shamrock #35c646, apple green #6cd651, green apple #66de46, bright green #4fe94d, tree green #499247, jungle green #48893f, darkish green #559645, darker green #41974e, cool green #48c47f, fern #6cb165, muted green #669f6a, dull green #73a360, seaweed #517f4a, seaweed green #539152',
	},
	{
		word: 'light green',
		basic: ['green'],
		entries:
			'light green #84e574, pale green #a0e29a, pastel green #9ae59b, soft green #80d48c, faded green #8dc888, very light green #b0f5ac, pistachio #a5de86, tea green #b2ce92, spring green #79e365, light lime green #a3f570',
	},
	{
		word: 'dark green',
		basic: ['green'],
		entries:
			'dark green #316632, forest green #356f37, forest #356f3a, hunter green #356639, evergreen #306e3f, pine green #357441, pine #306a3f, bottle green #346337, racing green #31642e, deep green #23592d, dark forest green #1e4523, very dark green #1d3a26',
	},
	{
		word: 'sage',
		basic: ['green', 'grey'],
		shade: 'dull',
		entries:
			'sage #8fb382, sage green #89b27a, grey green #84a185, grayish green #80997b, greenish grey #879b83, green grey #7b937d, dusty green #78a571',
	},
	{
		word: 'olive',
		basic: ['green', 'brown'],
		entries:
			'olive #84913e, olive green #798d39, army green #677a39, army #627032, military green #687a40, camo green #6a833f, olive drab #828b4f, dark olive green #566930, dark olive #505b26, moss green #6e9044, moss #79974e, mossy green #6aa34a, khaki green #859653, khaki #9f9b5a, drab green #688157, murky green #70853e, muddy green #78823f, swamp green #79923c, swamp #727d3f, navy green #5e7843, green brown #767233, brown green #837f30, brownish green #868632, greenish brown #776f2d, olive brown #7a681f, sap green #749a3b',
	},
	{
		word: 'lime',
		basic: ['green', 'yellow'],
		entries:
			'lime #92ee42, lime green #82ee3e, chartreuse #b3e041, yellow green #b3e53b, yellowish green #aad93e, green yellow #ace43c, greenish yellow #caea41, lime yellow #d2f33e, acid green #9eef37, pear #add545, dark lime #90c02d, dark lime green #77d231, pea green #97be43, light olive #9fb966',
	},
	{
		word: 'neon green',
		basic: ['green'],
		entries:
			'neon green #5ef444, neon #8fee5c, fluorescent green #6af651, highlighter green #6cf753, electric green #50f157, fluro green #52ed3b',
	},
	{ word: 'neon yellow', basic: ['yellow'], entries: 'neon yellow #dbf928, highlighter yellow #dcf92a' },
	{
		word: 'yellow',
		basic: ['yellow'],
		entries:
			'yellow #efe433, bright yellow #f2f727, lemon yellow #eef442, lemon #e7ef4e, canary yellow #f6ec2f, dandelion #f1d53a, sunflower yellow #f4d732, sunflower #f1d337, golden yellow #f4c622, goldenrod #f2bf27, marigold #f1ba20',
	},
	{
		word: 'light yellow',
		basic: ['yellow'],
		entries: 'light yellow #eeee82, pale yellow #edea88, pastel yellow #f0ee86, butter yellow #f7e279',
	},
	{
		word: 'mustard',
		basic: ['yellow', 'brown'],
		entries:
			'mustard #d7b631, mustard yellow #dcbc31, gold #d9b330, golden #e3b933, yellow gold #e4c63d, dark yellow #d7ba2c, dull yellow #dfd856, muted yellow #dbcf5c, yellow ochre #d6ad37, burnt yellow #d4ab2c, dirty yellow #cfc834, ochre #ce9935, amber #e08f29, honey #e3a82d, dark mustard #bc912c, dark gold #aa8b2a, bronze #ae822f, golden brown #af842e, yellow brown #a68935, brown yellow #aa9333, yellowish brown #a7832a',
	},
];
