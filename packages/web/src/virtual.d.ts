declare module 'virtual:sheet.css';
declare module 'virtual:paper.css';
