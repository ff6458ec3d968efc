"""The history: its entries, its chain, anchors of it, what can be taken back."""
