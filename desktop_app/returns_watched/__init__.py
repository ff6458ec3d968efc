"""Returns watched: windows after hand-over, which visits may be returns, their judgement."""
