// The one script that the server adds to the pane; it runs before office.js.
globalThis.parent.practice.connect(globalThis);
