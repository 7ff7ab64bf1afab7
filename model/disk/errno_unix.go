//go:build unix

package disk

import (
	"errors"
	"syscall"
)

func full(err error) bool {
	return errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT)
}

func readOnlySystem(err error) bool { return errors.Is(err, syscall.EROFS) }
