/** Where the page is found unless the user says otherwise, and the first that is offered instead of a port that only the system may use. */
export const USUAL_PORT = 4810;
