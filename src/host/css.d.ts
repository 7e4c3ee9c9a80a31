/** Style sheets are taken in by webpack. */
declare module "*.css";
