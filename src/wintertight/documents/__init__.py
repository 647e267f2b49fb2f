"""Papers, drawings and objects for programs: typed content in, text or bytes out."""
