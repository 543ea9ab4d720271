/** A style sheet that a screen brings with it: it is fetched when the screen is, and not before. */
declare module '*.css';
