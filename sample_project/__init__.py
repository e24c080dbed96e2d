"""Quernhallow, an invented golf course: its drawing, terrain and aerial images, all made by these scripts."""
