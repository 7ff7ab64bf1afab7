#!/bin/bash
# Tries what make dist has built as a stranger would: on a bare Debian 12, and under wine.
# Run as root, in the repository's folder, by make dist-try. It leaves its pictures in
# out/try and ends at the first thing that is not as it should be.
set -euo pipefail
trap 'echo "line $LINENO failed" >&2' ERR

work=$(mktemp -d /tmp/frontlay-try.XXXX)
root=$work/root
shots=$PWD/out/try
made=$(echo out/dist/frontlay_*.deb out/dist/frontlay-*-linux-*.tar.gz out/dist/frontlay-*-windows-*.zip)
display=:${TRY_DISPLAY:-87}
mkdir -p "$shots"
started=()
finish() {
	for pid in "${started[@]}"; do kill "$pid" 2>/dev/null || true; done
	rm -rf "$work"
}
trap finish EXIT

say() { printf '\n== %s\n' "$*"; }
fail() { echo "NOT AS IT SHOULD BE: $*" >&2; exit 1; }
inside() { chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin LANG=C.UTF-8 DEBIAN_FRONTEND=noninteractive DISPLAY="$display" HOME="${home:-/root}" "$@"; }
# everything lists the files of the system, without logs, caches and dpkg's own old copies.
everything() { (export LC_ALL=C; cd "$root" && find . -xdev \( -path ./proc -o -path ./sys -o -path ./dev -o -path ./tmp -o -path ./var/log -o -path ./var/cache -o -path ./var/lib/apt -o -path ./var/lib/systemd -o -path './var/lib/dpkg/*-old' -o -path ./root -o -path ./home \) -prune -o -print | sort); }
# told lists the files that speak of frontlay.
told() { (export LC_ALL=C; cd "$root" && grep -rIl -i frontlay etc usr var/lib 2>/dev/null | grep -v '^var/lib/dpkg/.*-old$' || true); }
# shown waits for a window whose name has a text, and takes a picture.
shown() {
	for _ in $(seq 120); do
		if DISPLAY=$display xdotool search --onlyvisible --name "$1" >/dev/null 2>&1; then
			sleep 4
			DISPLAY=$display import -window root "$shots/$2.png"
			echo "a window named $1 came: out/try/$2.png"
			return
		fi
		sleep 0.5
	done
	fail "no window named $1 came"
}
# closed closes the window by its key, as a person would, and waits until it is gone.
closed() {
	local window
	window=$(DISPLAY=$display xdotool search --onlyvisible --name "$1" | tail -1)
	DISPLAY=$display xdotool windowfocus "$window" sleep 0.5 key ctrl+q
	for _ in $(seq 40); do
		DISPLAY=$display xdotool search --onlyvisible --name "$1" >/dev/null 2>&1 || return 0
		sleep 0.5
	done
	fail "the window does not close"
}
# same compares two lists of files.
same() { diff "$1" "$2" || fail "$3"; }

Xvfb "$display" -screen 0 1366x768x24 -ac >/dev/null 2>&1 &
started+=($!)

say "A bare Debian 12"
debootstrap --variant=minbase bookworm "$root" "${TRY_MIRROR:-http://deb.debian.org/debian}" >"$shots/debootstrap.log"
mount -t proc proc "$root/proc" 2>/dev/null && trap 'umount "$root/proc" || true; finish' EXIT
mkdir "$root/try"
cp $made assets/projects/glaze-bench.yaml "$root/try"
inside dpkg-query -f '${Package}\n' -W >"$work/bare-packages"
everything >"$work/bare"

say "The package, with what it depends on and nothing else"
inside sh -c 'apt-get install -y -qq --no-install-recommends /try/frontlay_*.deb' >"$shots/apt.log" 2>&1
inside dpkg-query -f '${Package}\n' -W | comm -13 "$work/bare-packages" - | wc -l | sed 's/$/ packages came, frontlay among them/'
inside frontlay --version
inside frontlay check /try/glaze-bench.yaml | tail -1
inside frontlay /try/glaze-bench.yaml 2>"$shots/window.log" &
shown Glaze package
closed Glaze
inside apt-get purge -y -qq --autoremove frontlay >>"$shots/apt.log" 2>&1
everything >"$work/purged"
same "$work/bare" "$work/purged" "the purged package leaves something"
echo "after the purge every file of the system is one that was there before"
find "$root/root" -newer "$root/try" -type f | sed "s|^$root|the user's own: |"
rm -rf "$root/root/.config" "$root/root/.cache"

say "The package on a desktop: a project is opened by its type"
inside apt-get install -y -qq --no-install-recommends xdg-utils libfile-mimeinfo-perl desktop-file-utils shared-mime-info libglib2.0-bin man-db bash-completion >>"$shots/apt.log" 2>&1
everything >"$work/desktop"
told >"$work/desktop-told"
inside sh -c 'apt-get install -y -qq --no-install-recommends /try/frontlay_*.deb' >>"$shots/apt.log" 2>&1
type=$(inside xdg-mime query filetype /try/glaze-bench.yaml)
echo "$type is opened by $(inside xdg-mime query default "$type")"
[ "$type" = application/x-frontlay+yaml ] || fail "the type of a project is $type"
inside gio mime "$type" | sed -n 1p
inside man -P cat frontlay 2>/dev/null | sed -n '/^NAME/,/^SYNOPSIS/{/ - /p}'
inside xdg-open /try/glaze-bench.yaml 2>>"$shots/window.log" &
shown Glaze xdg-open
closed Glaze
inside apt-get purge -y -qq --autoremove frontlay >>"$shots/apt.log" 2>&1
everything >"$work/purged"
told >"$work/purged-told"
same "$work/desktop" "$work/purged" "the purged package leaves something"
same "$work/desktop-told" "$work/purged-told" "the purged package is still told of"
echo "after the purge every file of the system is one that was there before, and none tells of frontlay"
rm -rf "$root/root/.config" "$root/root/.cache"

say "The tarball, for one user"
inside useradd -m joiner
home=/home/joiner
(cd "$root$home" && find . | sort) >"$work/home"
as() { home=/home/joiner inside setpriv --reuid joiner --regid joiner --clear-groups env PATH="/home/joiner/.local/bin:$PATH" "$@"; }
inside sh -c 'tar -C /try -xzf /try/frontlay-*-linux-*.tar.gz && rm /try/*.tar.gz'
as sh -c '/try/frontlay-*/install.sh' | tee "$work/said"
inside sh -c "apt-get install -y -qq --no-install-recommends $(sed -n 's/^ *apt install //p' "$work/said")" >>"$shots/apt.log" 2>&1
as frontlay --version
cp assets/projects/glaze-bench.yaml "$root$home/bench.yaml"
type=$(as xdg-mime query filetype $home/bench.yaml)
[ "$type" = application/x-frontlay+yaml ] || fail "the type of a project is $type"
as gio open $home/bench.yaml 2>>"$shots/window.log" &
shown Glaze tarball
closed Glaze
as sh -c '/try/frontlay-*/install.sh --remove'
(cd "$root$home" && find . -path ./.cache/mesa_shader_cache -prune -o -print | sort) | comm -13 "$work/home" - | sed "s/^/the user's own: /"
[ ! -e "$root$home/.local" ] || fail "the removed tarball leaves something"

say "Windows, under wine"
export WINEPREFIX=$work/wine WINEDEBUG=-all SOURCE_DATE_EPOCH=1700000000 DISPLAY=$display
wineboot -i >/dev/null 2>&1 || wine wineboot -i >/dev/null 2>&1
# Go asks Windows for random bytes by ProcessPrng, which wine has since version 8.13.
if [ ! -e "$WINEPREFIX/drive_c/windows/system32/bcryptprimitives.dll" ]; then
	printf '%s\n' '#include <windows.h>' 'BOOLEAN NTAPI SystemFunction036(PVOID, ULONG);' \
		'__declspec(dllexport) BOOL WINAPI ProcessPrng(PBYTE p, SIZE_T n) { return SystemFunction036(p, n); }' >"$work/prng.c"
	x86_64-w64-mingw32-gcc -shared -o "$WINEPREFIX/drive_c/windows/system32/bcryptprimitives.dll" "$work/prng.c" -ladvapi32
fi
python3 -m zipfile -e out/dist/frontlay-*-windows-*.zip "$work"
cp assets/projects/glaze-bench.yaml "$work/frontlay-"*/
cd "$work"/frontlay-*/
wine frontlay.exe --version
wine frontlay.exe check glaze-bench.yaml | tail -1
wine frontlay.exe print glaze-bench.yaml -o windows.pdf --for everything | tr -d '\r' >windows.txt
wine frontlay.exe export glaze-bench.yaml -o windows | tail -1
inside env SOURCE_DATE_EPOCH=$SOURCE_DATE_EPOCH sh -c 'cd /try && frontlay-*/bin/frontlay print glaze-bench.yaml -o linux.pdf --for everything && frontlay-*/bin/frontlay export glaze-bench.yaml -o linux' >/dev/null
for part in "" -templates -labels; do
	cmp "windows$part.pdf" "$root/try/linux$part.pdf" || fail "the PDF under wine is another"
	sha256sum "windows$part.pdf"
done
diff -r windows "$root/try/linux" || fail "what is exported under wine is another"
echo "PDFs and exported files are the same bytes as on Linux"
wine frontlay.exe glaze-bench.yaml >/dev/null 2>"$shots/wine.log" &
started+=($!)
shown Glaze wine
wineserver -k || true
