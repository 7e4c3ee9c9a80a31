/** webpack imports style sheets. */
declare module "*.css";
